/**
 */
package cradlewright.model.base;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Identified</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something that can be pointed at from anywhere in the shop.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.base.Identified#getId <em>Id</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.base.BasePackage#getIdentified()
 * @model abstract="true"
 * @generated
 */
public interface Identified extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Given once by the source of ids, never changed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see cradlewright.model.base.BasePackage#getIdentified_Id()
	 * @model id="true" dataType="cradlewright.model.base.Id"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link cradlewright.model.base.Identified#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

} // Identified
