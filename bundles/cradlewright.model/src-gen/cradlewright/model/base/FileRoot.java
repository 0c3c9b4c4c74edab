/**
 */
package cradlewright.model.base;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>File Root</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The one object at the top of a file.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.FileRoot#getSchema <em>Schema</em>}</li>
 *   <li>{@link cradlewright.model.base.FileRoot#isDraft <em>Draft</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.base.BasePackage#getFileRoot()
 * @model interface="true" abstract="true"
 * @generated
 */
public interface FileRoot extends EObject {
	/**
	 * Returns the value of the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the file form; the reader brings older files up to date.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Schema</em>' attribute.
	 * @see #setSchema(int)
	 * @see cradlewright.model.base.BasePackage#getFileRoot_Schema()
	 * @model required="true"
	 * @generated
	 */
	int getSchema();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.FileRoot#getSchema <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schema</em>' attribute.
	 * @see #getSchema()
	 * @generated
	 */
	void setSchema(int value);

	/**
	 * Returns the value of the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the file was written before the first release of its form.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Draft</em>' attribute.
	 * @see #setDraft(boolean)
	 * @see cradlewright.model.base.BasePackage#getFileRoot_Draft()
	 * @model
	 * @generated
	 */
	boolean isDraft();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.FileRoot#isDraft <em>Draft</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Draft</em>' attribute.
	 * @see #isDraft()
	 * @generated
	 */
	void setDraft(boolean value);

} // FileRoot
