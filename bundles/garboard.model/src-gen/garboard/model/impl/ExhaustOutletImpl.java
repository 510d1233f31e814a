/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.AntiSurge;
import garboard.model.ExhaustOutlet;
import garboard.model.FittingMaterial;
import garboard.model.GarboardPackage;
import garboard.model.OutletPlace;
import garboard.model.Point;

import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Exhaust Outlet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getInsideBottom <em>Inside Bottom</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getAntiSurge <em>Anti Surge</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getClosedByValve <em>Closed By Valve</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getUnderSwimPlatform <em>Under Swim Platform</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getNearOpenings <em>Near Openings</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getDistanceToOpening <em>Distance To Opening</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getWaterVisible <em>Water Visible</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustOutletImpl#getMaterial <em>Material</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExhaustOutletImpl extends MinimalEObjectImpl.Container implements ExhaustOutlet {
	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final OutletPlace PLACE_EDEFAULT = OutletPlace.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected OutletPlace place = PLACE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInsideBottom() <em>Inside Bottom</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideBottom()
	 * @generated
	 * @ordered
	 */
	protected Point insideBottom;

	/**
	 * The default value of the '{@link #getBore() <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBore() <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBore()
	 * @generated
	 * @ordered
	 */
	protected Length bore = BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAntiSurge() <em>Anti Surge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSurge()
	 * @generated
	 * @ordered
	 */
	protected static final AntiSurge ANTI_SURGE_EDEFAULT = AntiSurge.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getAntiSurge() <em>Anti Surge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAntiSurge()
	 * @generated
	 * @ordered
	 */
	protected AntiSurge antiSurge = ANTI_SURGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getClosedByValve() <em>Closed By Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosedByValve()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CLOSED_BY_VALVE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getClosedByValve() <em>Closed By Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosedByValve()
	 * @generated
	 * @ordered
	 */
	protected Answer closedByValve = CLOSED_BY_VALVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnderSwimPlatform() <em>Under Swim Platform</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnderSwimPlatform()
	 * @generated
	 * @ordered
	 */
	protected static final Answer UNDER_SWIM_PLATFORM_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getUnderSwimPlatform() <em>Under Swim Platform</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnderSwimPlatform()
	 * @generated
	 * @ordered
	 */
	protected Answer underSwimPlatform = UNDER_SWIM_PLATFORM_EDEFAULT;

	/**
	 * The default value of the '{@link #getNearOpenings() <em>Near Openings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNearOpenings()
	 * @generated
	 * @ordered
	 */
	protected static final Answer NEAR_OPENINGS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getNearOpenings() <em>Near Openings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNearOpenings()
	 * @generated
	 * @ordered
	 */
	protected Answer nearOpenings = NEAR_OPENINGS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDistanceToOpening() <em>Distance To Opening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceToOpening()
	 * @generated
	 * @ordered
	 */
	protected static final Length DISTANCE_TO_OPENING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistanceToOpening() <em>Distance To Opening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceToOpening()
	 * @generated
	 * @ordered
	 */
	protected Length distanceToOpening = DISTANCE_TO_OPENING_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterVisible() <em>Water Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterVisible()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_VISIBLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterVisible() <em>Water Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterVisible()
	 * @generated
	 * @ordered
	 */
	protected Answer waterVisible = WATER_VISIBLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final FittingMaterial MATERIAL_EDEFAULT = FittingMaterial.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected FittingMaterial material = MATERIAL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExhaustOutletImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.EXHAUST_OUTLET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutletPlace getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(OutletPlace newPlace) {
		OutletPlace oldPlace = place;
		place = newPlace == null ? PLACE_EDEFAULT : newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getInsideBottom() {
		return insideBottom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetInsideBottom(Point newInsideBottom, NotificationChain msgs) {
		Point oldInsideBottom = insideBottom;
		insideBottom = newInsideBottom;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM, oldInsideBottom, newInsideBottom);
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
	public void setInsideBottom(Point newInsideBottom) {
		if (newInsideBottom != insideBottom) {
			NotificationChain msgs = null;
			if (insideBottom != null)
				msgs = ((InternalEObject)insideBottom).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM, null, msgs);
			if (newInsideBottom != null)
				msgs = ((InternalEObject)newInsideBottom).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM, null, msgs);
			msgs = basicSetInsideBottom(newInsideBottom, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM, newInsideBottom, newInsideBottom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBore() {
		return bore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBore(Length newBore) {
		Length oldBore = bore;
		bore = newBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AntiSurge getAntiSurge() {
		return antiSurge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAntiSurge(AntiSurge newAntiSurge) {
		AntiSurge oldAntiSurge = antiSurge;
		antiSurge = newAntiSurge == null ? ANTI_SURGE_EDEFAULT : newAntiSurge;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__ANTI_SURGE, oldAntiSurge, antiSurge));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getClosedByValve() {
		return closedByValve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClosedByValve(Answer newClosedByValve) {
		Answer oldClosedByValve = closedByValve;
		closedByValve = newClosedByValve == null ? CLOSED_BY_VALVE_EDEFAULT : newClosedByValve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__CLOSED_BY_VALVE, oldClosedByValve, closedByValve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getUnderSwimPlatform() {
		return underSwimPlatform;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnderSwimPlatform(Answer newUnderSwimPlatform) {
		Answer oldUnderSwimPlatform = underSwimPlatform;
		underSwimPlatform = newUnderSwimPlatform == null ? UNDER_SWIM_PLATFORM_EDEFAULT : newUnderSwimPlatform;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM, oldUnderSwimPlatform, underSwimPlatform));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getNearOpenings() {
		return nearOpenings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNearOpenings(Answer newNearOpenings) {
		Answer oldNearOpenings = nearOpenings;
		nearOpenings = newNearOpenings == null ? NEAR_OPENINGS_EDEFAULT : newNearOpenings;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__NEAR_OPENINGS, oldNearOpenings, nearOpenings));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDistanceToOpening() {
		return distanceToOpening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistanceToOpening(Length newDistanceToOpening) {
		Length oldDistanceToOpening = distanceToOpening;
		distanceToOpening = newDistanceToOpening;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__DISTANCE_TO_OPENING, oldDistanceToOpening, distanceToOpening));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterVisible() {
		return waterVisible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterVisible(Answer newWaterVisible) {
		Answer oldWaterVisible = waterVisible;
		waterVisible = newWaterVisible == null ? WATER_VISIBLE_EDEFAULT : newWaterVisible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__WATER_VISIBLE, oldWaterVisible, waterVisible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FittingMaterial getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(FittingMaterial newMaterial) {
		FittingMaterial oldMaterial = material;
		material = newMaterial == null ? MATERIAL_EDEFAULT : newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_OUTLET__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM:
				return basicSetInsideBottom(null, msgs);
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
			case GarboardPackage.EXHAUST_OUTLET__PLACE:
				return getPlace();
			case GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM:
				return getInsideBottom();
			case GarboardPackage.EXHAUST_OUTLET__BORE:
				return getBore();
			case GarboardPackage.EXHAUST_OUTLET__ANTI_SURGE:
				return getAntiSurge();
			case GarboardPackage.EXHAUST_OUTLET__CLOSED_BY_VALVE:
				return getClosedByValve();
			case GarboardPackage.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM:
				return getUnderSwimPlatform();
			case GarboardPackage.EXHAUST_OUTLET__NEAR_OPENINGS:
				return getNearOpenings();
			case GarboardPackage.EXHAUST_OUTLET__DISTANCE_TO_OPENING:
				return getDistanceToOpening();
			case GarboardPackage.EXHAUST_OUTLET__WATER_VISIBLE:
				return getWaterVisible();
			case GarboardPackage.EXHAUST_OUTLET__MATERIAL:
				return getMaterial();
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
			case GarboardPackage.EXHAUST_OUTLET__PLACE:
				setPlace((OutletPlace)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM:
				setInsideBottom((Point)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__ANTI_SURGE:
				setAntiSurge((AntiSurge)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__CLOSED_BY_VALVE:
				setClosedByValve((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM:
				setUnderSwimPlatform((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__NEAR_OPENINGS:
				setNearOpenings((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__DISTANCE_TO_OPENING:
				setDistanceToOpening((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__WATER_VISIBLE:
				setWaterVisible((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_OUTLET__MATERIAL:
				setMaterial((FittingMaterial)newValue);
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
			case GarboardPackage.EXHAUST_OUTLET__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM:
				setInsideBottom((Point)null);
				return;
			case GarboardPackage.EXHAUST_OUTLET__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__ANTI_SURGE:
				setAntiSurge(ANTI_SURGE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__CLOSED_BY_VALVE:
				setClosedByValve(CLOSED_BY_VALVE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM:
				setUnderSwimPlatform(UNDER_SWIM_PLATFORM_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__NEAR_OPENINGS:
				setNearOpenings(NEAR_OPENINGS_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__DISTANCE_TO_OPENING:
				setDistanceToOpening(DISTANCE_TO_OPENING_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__WATER_VISIBLE:
				setWaterVisible(WATER_VISIBLE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_OUTLET__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
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
			case GarboardPackage.EXHAUST_OUTLET__PLACE:
				return place != PLACE_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__INSIDE_BOTTOM:
				return insideBottom != null;
			case GarboardPackage.EXHAUST_OUTLET__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.EXHAUST_OUTLET__ANTI_SURGE:
				return antiSurge != ANTI_SURGE_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__CLOSED_BY_VALVE:
				return closedByValve != CLOSED_BY_VALVE_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM:
				return underSwimPlatform != UNDER_SWIM_PLATFORM_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__NEAR_OPENINGS:
				return nearOpenings != NEAR_OPENINGS_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__DISTANCE_TO_OPENING:
				return DISTANCE_TO_OPENING_EDEFAULT == null ? distanceToOpening != null : !DISTANCE_TO_OPENING_EDEFAULT.equals(distanceToOpening);
			case GarboardPackage.EXHAUST_OUTLET__WATER_VISIBLE:
				return waterVisible != WATER_VISIBLE_EDEFAULT;
			case GarboardPackage.EXHAUST_OUTLET__MATERIAL:
				return material != MATERIAL_EDEFAULT;
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
		result.append(" (place: ");
		result.append(place);
		result.append(", bore: ");
		result.append(bore);
		result.append(", antiSurge: ");
		result.append(antiSurge);
		result.append(", closedByValve: ");
		result.append(closedByValve);
		result.append(", underSwimPlatform: ");
		result.append(underSwimPlatform);
		result.append(", nearOpenings: ");
		result.append(nearOpenings);
		result.append(", distanceToOpening: ");
		result.append(distanceToOpening);
		result.append(", waterVisible: ");
		result.append(waterVisible);
		result.append(", material: ");
		result.append(material);
		result.append(')');
		return result.toString();
	}

} //ExhaustOutletImpl
