/**
 */
package cradlewright.model.stock;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bolt Type</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.BoltType#getSize <em>Size</em>}</li>
 *   <li>{@link cradlewright.model.stock.BoltType#getGrade <em>Grade</em>}</li>
 *   <li>{@link cradlewright.model.stock.BoltType#getThreadsInShear <em>Threads In Shear</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getBoltType()
 * @model
 * @generated
 */
public interface BoltType extends StockItem {
	/**
	 * Returns the value of the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metric thread, M6 to M16.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size</em>' attribute.
	 * @see #setSize(String)
	 * @see cradlewright.model.stock.StockPackage#getBoltType_Size()
	 * @model
	 * @generated
	 */
	String getSize();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.BoltType#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size</em>' attribute.
	 * @see #getSize()
	 * @generated
	 */
	void setSize(String value);

	/**
	 * Returns the value of the '<em><b>Grade</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Property class, as 8.8.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Grade</em>' attribute.
	 * @see #setGrade(String)
	 * @see cradlewright.model.stock.StockPackage#getBoltType_Grade()
	 * @model
	 * @generated
	 */
	String getGrade();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.BoltType#getGrade <em>Grade</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grade</em>' attribute.
	 * @see #getGrade()
	 * @generated
	 */
	void setGrade(String value);

	/**
	 * Returns the value of the '<em><b>Threads In Shear</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the shear plane passes through the thread; not known when missing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Threads In Shear</em>' attribute.
	 * @see #setThreadsInShear(Boolean)
	 * @see cradlewright.model.stock.StockPackage#getBoltType_ThreadsInShear()
	 * @model
	 * @generated
	 */
	Boolean getThreadsInShear();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.BoltType#getThreadsInShear <em>Threads In Shear</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threads In Shear</em>' attribute.
	 * @see #getThreadsInShear()
	 * @generated
	 */
	void setThreadsInShear(Boolean value);

} // BoltType
