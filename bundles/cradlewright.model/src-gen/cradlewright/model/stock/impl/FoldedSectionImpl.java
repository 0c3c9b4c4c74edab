/**
 */
package cradlewright.model.stock.impl;

import cradlewright.model.stock.FoldShape;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.StockPackage;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Folded Section</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getShape <em>Shape</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getLip <em>Lip</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getThickness <em>Thickness</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getInsideRadius <em>Inside Radius</em>}</li>
 *   <li>{@link cradlewright.model.stock.impl.FoldedSectionImpl#getPoints <em>Points</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FoldedSectionImpl extends SectionImpl implements FoldedSection {
	/**
	 * The default value of the '{@link #getShape() <em>Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShape()
	 * @generated
	 * @ordered
	 */
	protected static final FoldShape SHAPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShape() <em>Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShape()
	 * @generated
	 * @ordered
	 */
	protected FoldShape shape = SHAPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Measured HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected Measured height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Measured WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected Measured width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getLip() <em>Lip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLip()
	 * @generated
	 * @ordered
	 */
	protected static final Measured LIP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLip() <em>Lip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLip()
	 * @generated
	 * @ordered
	 */
	protected Measured lip = LIP_EDEFAULT;

	/**
	 * The default value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Measured THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThickness() <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThickness()
	 * @generated
	 * @ordered
	 */
	protected Measured thickness = THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsideRadius() <em>Inside Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideRadius()
	 * @generated
	 * @ordered
	 */
	protected static final Measured INSIDE_RADIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInsideRadius() <em>Inside Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideRadius()
	 * @generated
	 * @ordered
	 */
	protected Measured insideRadius = INSIDE_RADIUS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPoints() <em>Points</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<Position> points;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FoldedSectionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return StockPackage.Literals.FOLDED_SECTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FoldShape getShape() {
		return shape;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShape(FoldShape newShape) {
		FoldShape oldShape = shape;
		shape = newShape;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__SHAPE, oldShape, shape));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Measured newHeight) {
		Measured oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Measured newWidth) {
		Measured oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getLip() {
		return lip;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLip(Measured newLip) {
		Measured oldLip = lip;
		lip = newLip;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__LIP, oldLip, lip));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getThickness() {
		return thickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThickness(Measured newThickness) {
		Measured oldThickness = thickness;
		thickness = newThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__THICKNESS, oldThickness, thickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measured getInsideRadius() {
		return insideRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsideRadius(Measured newInsideRadius) {
		Measured oldInsideRadius = insideRadius;
		insideRadius = newInsideRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, StockPackage.FOLDED_SECTION__INSIDE_RADIUS, oldInsideRadius, insideRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Position> getPoints() {
		if (points == null) {
			points = new EDataTypeEList<Position>(Position.class, this, StockPackage.FOLDED_SECTION__POINTS);
		}
		return points;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case StockPackage.FOLDED_SECTION__SHAPE:
				return getShape();
			case StockPackage.FOLDED_SECTION__HEIGHT:
				return getHeight();
			case StockPackage.FOLDED_SECTION__WIDTH:
				return getWidth();
			case StockPackage.FOLDED_SECTION__LIP:
				return getLip();
			case StockPackage.FOLDED_SECTION__THICKNESS:
				return getThickness();
			case StockPackage.FOLDED_SECTION__INSIDE_RADIUS:
				return getInsideRadius();
			case StockPackage.FOLDED_SECTION__POINTS:
				return getPoints();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case StockPackage.FOLDED_SECTION__SHAPE:
				setShape((FoldShape)newValue);
				return;
			case StockPackage.FOLDED_SECTION__HEIGHT:
				setHeight((Measured)newValue);
				return;
			case StockPackage.FOLDED_SECTION__WIDTH:
				setWidth((Measured)newValue);
				return;
			case StockPackage.FOLDED_SECTION__LIP:
				setLip((Measured)newValue);
				return;
			case StockPackage.FOLDED_SECTION__THICKNESS:
				setThickness((Measured)newValue);
				return;
			case StockPackage.FOLDED_SECTION__INSIDE_RADIUS:
				setInsideRadius((Measured)newValue);
				return;
			case StockPackage.FOLDED_SECTION__POINTS:
				getPoints().clear();
				getPoints().addAll((Collection<? extends Position>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case StockPackage.FOLDED_SECTION__SHAPE:
				setShape(SHAPE_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__LIP:
				setLip(LIP_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__THICKNESS:
				setThickness(THICKNESS_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__INSIDE_RADIUS:
				setInsideRadius(INSIDE_RADIUS_EDEFAULT);
				return;
			case StockPackage.FOLDED_SECTION__POINTS:
				getPoints().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case StockPackage.FOLDED_SECTION__SHAPE:
				return SHAPE_EDEFAULT == null ? shape != null : !SHAPE_EDEFAULT.equals(shape);
			case StockPackage.FOLDED_SECTION__HEIGHT:
				return HEIGHT_EDEFAULT == null ? height != null : !HEIGHT_EDEFAULT.equals(height);
			case StockPackage.FOLDED_SECTION__WIDTH:
				return WIDTH_EDEFAULT == null ? width != null : !WIDTH_EDEFAULT.equals(width);
			case StockPackage.FOLDED_SECTION__LIP:
				return LIP_EDEFAULT == null ? lip != null : !LIP_EDEFAULT.equals(lip);
			case StockPackage.FOLDED_SECTION__THICKNESS:
				return THICKNESS_EDEFAULT == null ? thickness != null : !THICKNESS_EDEFAULT.equals(thickness);
			case StockPackage.FOLDED_SECTION__INSIDE_RADIUS:
				return INSIDE_RADIUS_EDEFAULT == null ? insideRadius != null : !INSIDE_RADIUS_EDEFAULT.equals(insideRadius);
			case StockPackage.FOLDED_SECTION__POINTS:
				return points != null && !points.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (shape: ");
		result.append(shape);
		result.append(", height: ");
		result.append(height);
		result.append(", width: ");
		result.append(width);
		result.append(", lip: ");
		result.append(lip);
		result.append(", thickness: ");
		result.append(thickness);
		result.append(", insideRadius: ");
		result.append(insideRadius);
		result.append(", points: ");
		result.append(points);
		result.append(')');
		return result.toString();
	}

} //FoldedSectionImpl
