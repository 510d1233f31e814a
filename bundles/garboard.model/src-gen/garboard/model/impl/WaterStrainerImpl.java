/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.model.WaterStrainer;

import garboard.quantity.Area;
import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Water Strainer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getPortBore <em>Port Bore</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getBasketOpenArea <em>Basket Open Area</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getHoleSize <em>Hole Size</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getSeeThroughOrOpenable <em>See Through Or Openable</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getBesideSeacock <em>Beside Seacock</em>}</li>
 *   <li>{@link garboard.model.impl.WaterStrainerImpl#getLidAboveWaterline <em>Lid Above Waterline</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaterStrainerImpl extends MinimalEObjectImpl.Container implements WaterStrainer {
	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Point position;

	/**
	 * The default value of the '{@link #getPortBore() <em>Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPortBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length PORT_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPortBore() <em>Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPortBore()
	 * @generated
	 * @ordered
	 */
	protected Length portBore = PORT_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBasketOpenArea() <em>Basket Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasketOpenArea()
	 * @generated
	 * @ordered
	 */
	protected static final Area BASKET_OPEN_AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBasketOpenArea() <em>Basket Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasketOpenArea()
	 * @generated
	 * @ordered
	 */
	protected Area basketOpenArea = BASKET_OPEN_AREA_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoleSize() <em>Hole Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoleSize()
	 * @generated
	 * @ordered
	 */
	protected static final Length HOLE_SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHoleSize() <em>Hole Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoleSize()
	 * @generated
	 * @ordered
	 */
	protected Length holeSize = HOLE_SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeeThroughOrOpenable() <em>See Through Or Openable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeeThroughOrOpenable()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SEE_THROUGH_OR_OPENABLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSeeThroughOrOpenable() <em>See Through Or Openable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeeThroughOrOpenable()
	 * @generated
	 * @ordered
	 */
	protected Answer seeThroughOrOpenable = SEE_THROUGH_OR_OPENABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBesideSeacock() <em>Beside Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBesideSeacock()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BESIDE_SEACOCK_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBesideSeacock() <em>Beside Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBesideSeacock()
	 * @generated
	 * @ordered
	 */
	protected Answer besideSeacock = BESIDE_SEACOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getLidAboveWaterline() <em>Lid Above Waterline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLidAboveWaterline()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LID_ABOVE_WATERLINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLidAboveWaterline() <em>Lid Above Waterline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLidAboveWaterline()
	 * @generated
	 * @ordered
	 */
	protected Answer lidAboveWaterline = LID_ABOVE_WATERLINE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WaterStrainerImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.WATER_STRAINER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPosition(Point newPosition, NotificationChain msgs) {
		Point oldPosition = position;
		position = newPosition;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__POSITION, oldPosition, newPosition);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Point newPosition) {
		if (newPosition != position) {
			NotificationChain msgs = null;
			if (position != null)
				msgs = ((InternalEObject)position).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.WATER_STRAINER__POSITION, null, msgs);
			if (newPosition != null)
				msgs = ((InternalEObject)newPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.WATER_STRAINER__POSITION, null, msgs);
			msgs = basicSetPosition(newPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__POSITION, newPosition, newPosition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getPortBore() {
		return portBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPortBore(Length newPortBore) {
		Length oldPortBore = portBore;
		portBore = newPortBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__PORT_BORE, oldPortBore, portBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getBasketOpenArea() {
		return basketOpenArea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasketOpenArea(Area newBasketOpenArea) {
		Area oldBasketOpenArea = basketOpenArea;
		basketOpenArea = newBasketOpenArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__BASKET_OPEN_AREA, oldBasketOpenArea, basketOpenArea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHoleSize() {
		return holeSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoleSize(Length newHoleSize) {
		Length oldHoleSize = holeSize;
		holeSize = newHoleSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__HOLE_SIZE, oldHoleSize, holeSize));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSeeThroughOrOpenable() {
		return seeThroughOrOpenable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeeThroughOrOpenable(Answer newSeeThroughOrOpenable) {
		Answer oldSeeThroughOrOpenable = seeThroughOrOpenable;
		seeThroughOrOpenable = newSeeThroughOrOpenable == null ? SEE_THROUGH_OR_OPENABLE_EDEFAULT : newSeeThroughOrOpenable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE, oldSeeThroughOrOpenable, seeThroughOrOpenable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBesideSeacock() {
		return besideSeacock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBesideSeacock(Answer newBesideSeacock) {
		Answer oldBesideSeacock = besideSeacock;
		besideSeacock = newBesideSeacock == null ? BESIDE_SEACOCK_EDEFAULT : newBesideSeacock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__BESIDE_SEACOCK, oldBesideSeacock, besideSeacock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLidAboveWaterline() {
		return lidAboveWaterline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLidAboveWaterline(Answer newLidAboveWaterline) {
		Answer oldLidAboveWaterline = lidAboveWaterline;
		lidAboveWaterline = newLidAboveWaterline == null ? LID_ABOVE_WATERLINE_EDEFAULT : newLidAboveWaterline;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_STRAINER__LID_ABOVE_WATERLINE, oldLidAboveWaterline, lidAboveWaterline));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.WATER_STRAINER__POSITION:
				return basicSetPosition(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.WATER_STRAINER__POSITION:
				return getPosition();
			case GarboardPackage.WATER_STRAINER__PORT_BORE:
				return getPortBore();
			case GarboardPackage.WATER_STRAINER__BASKET_OPEN_AREA:
				return getBasketOpenArea();
			case GarboardPackage.WATER_STRAINER__HOLE_SIZE:
				return getHoleSize();
			case GarboardPackage.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE:
				return getSeeThroughOrOpenable();
			case GarboardPackage.WATER_STRAINER__BESIDE_SEACOCK:
				return getBesideSeacock();
			case GarboardPackage.WATER_STRAINER__LID_ABOVE_WATERLINE:
				return getLidAboveWaterline();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.WATER_STRAINER__POSITION:
				setPosition((Point)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__PORT_BORE:
				setPortBore((Length)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__BASKET_OPEN_AREA:
				setBasketOpenArea((Area)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__HOLE_SIZE:
				setHoleSize((Length)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE:
				setSeeThroughOrOpenable((Answer)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__BESIDE_SEACOCK:
				setBesideSeacock((Answer)newValue);
				return;
			case GarboardPackage.WATER_STRAINER__LID_ABOVE_WATERLINE:
				setLidAboveWaterline((Answer)newValue);
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
			case GarboardPackage.WATER_STRAINER__POSITION:
				setPosition((Point)null);
				return;
			case GarboardPackage.WATER_STRAINER__PORT_BORE:
				setPortBore(PORT_BORE_EDEFAULT);
				return;
			case GarboardPackage.WATER_STRAINER__BASKET_OPEN_AREA:
				setBasketOpenArea(BASKET_OPEN_AREA_EDEFAULT);
				return;
			case GarboardPackage.WATER_STRAINER__HOLE_SIZE:
				setHoleSize(HOLE_SIZE_EDEFAULT);
				return;
			case GarboardPackage.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE:
				setSeeThroughOrOpenable(SEE_THROUGH_OR_OPENABLE_EDEFAULT);
				return;
			case GarboardPackage.WATER_STRAINER__BESIDE_SEACOCK:
				setBesideSeacock(BESIDE_SEACOCK_EDEFAULT);
				return;
			case GarboardPackage.WATER_STRAINER__LID_ABOVE_WATERLINE:
				setLidAboveWaterline(LID_ABOVE_WATERLINE_EDEFAULT);
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
			case GarboardPackage.WATER_STRAINER__POSITION:
				return position != null;
			case GarboardPackage.WATER_STRAINER__PORT_BORE:
				return PORT_BORE_EDEFAULT == null ? portBore != null : !PORT_BORE_EDEFAULT.equals(portBore);
			case GarboardPackage.WATER_STRAINER__BASKET_OPEN_AREA:
				return BASKET_OPEN_AREA_EDEFAULT == null ? basketOpenArea != null : !BASKET_OPEN_AREA_EDEFAULT.equals(basketOpenArea);
			case GarboardPackage.WATER_STRAINER__HOLE_SIZE:
				return HOLE_SIZE_EDEFAULT == null ? holeSize != null : !HOLE_SIZE_EDEFAULT.equals(holeSize);
			case GarboardPackage.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE:
				return seeThroughOrOpenable != SEE_THROUGH_OR_OPENABLE_EDEFAULT;
			case GarboardPackage.WATER_STRAINER__BESIDE_SEACOCK:
				return besideSeacock != BESIDE_SEACOCK_EDEFAULT;
			case GarboardPackage.WATER_STRAINER__LID_ABOVE_WATERLINE:
				return lidAboveWaterline != LID_ABOVE_WATERLINE_EDEFAULT;
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
		result.append(" (portBore: ");
		result.append(portBore);
		result.append(", basketOpenArea: ");
		result.append(basketOpenArea);
		result.append(", holeSize: ");
		result.append(holeSize);
		result.append(", seeThroughOrOpenable: ");
		result.append(seeThroughOrOpenable);
		result.append(", besideSeacock: ");
		result.append(besideSeacock);
		result.append(", lidAboveWaterline: ");
		result.append(lidAboveWaterline);
		result.append(')');
		return result.toString();
	}

} //WaterStrainerImpl
