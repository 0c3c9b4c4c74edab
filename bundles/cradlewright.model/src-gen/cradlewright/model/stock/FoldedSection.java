/**
 */
package cradlewright.model.stock;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Folded Section</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Section folded from sheet, outside dimensions.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getShape <em>Shape</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getHeight <em>Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getLip <em>Lip</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getInsideRadius <em>Inside Radius</em>}</li>
 *   <li>{@link cradlewright.model.stock.FoldedSection#getPoints <em>Points</em>}</li>
 * </ul>
 *
 * @see cradlewright.model.stock.StockPackage#getFoldedSection()
 * @model
 * @generated
 */
public interface FoldedSection extends Section {
	/**
	 * Returns the value of the '<em><b>Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shape</em>' attribute.
	 * @see #setShape(FoldShape)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Shape()
	 * @model dataType="cradlewright.model.stock.FoldShapeObject"
	 * @generated
	 */
	FoldShape getShape();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getShape <em>Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shape</em>' attribute.
	 * @see #getShape()
	 * @generated
	 */
	void setShape(FoldShape value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Height()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getHeight();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Measured value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Width()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getWidth();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Measured value);

	/**
	 * Returns the value of the '<em><b>Lip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lip</em>' attribute.
	 * @see #setLip(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Lip()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getLip();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getLip <em>Lip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lip</em>' attribute.
	 * @see #getLip()
	 * @generated
	 */
	void setLip(Measured value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Thickness()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='positive'"
	 * @generated
	 */
	Measured getThickness();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Measured value);

	/**
	 * Returns the value of the '<em><b>Inside Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inside Radius</em>' attribute.
	 * @see #setInsideRadius(Measured)
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_InsideRadius()
	 * @model dataType="cradlewright.model.base.Length"
	 *        annotation="urn:cradlewright:rules sign='not negative'"
	 * @generated
	 */
	Measured getInsideRadius();

	/**
	 * Sets the value of the '{@link cradlewright.model.stock.FoldedSection#getInsideRadius <em>Inside Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside Radius</em>' attribute.
	 * @see #getInsideRadius()
	 * @generated
	 */
	void setInsideRadius(Measured value);

	/**
	 * Returns the value of the '<em><b>Points</b></em>' attribute list.
	 * The list contents are of type {@link cradlewright.quantity.Position}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mid line of a polyline in its own plane: y and z of each point, x is 0.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Points</em>' attribute list.
	 * @see cradlewright.model.stock.StockPackage#getFoldedSection_Points()
	 * @model unique="false" dataType="cradlewright.model.base.Position"
	 * @generated
	 */
	EList<Position> getPoints();

} // FoldedSection
