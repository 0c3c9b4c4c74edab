/**
 */
package cradlewright.model.job;

import cradlewright.model.base.Named;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Person</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.job.Person#getSkills <em>Skills</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.job.JobPackage#getPerson()
 * @model
 * @generated
 */
public interface Person extends Named {
	/**
	 * Returns the value of the '<em><b>Skills</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Skills</em>' attribute list.
	 * @see cradlewright.model.job.JobPackage#getPerson_Skills()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getSkills();

} // Person
