/**
 */
package garboard.model.impl;

import garboard.model.FittingMaterial;
import garboard.model.GarboardPackage;
import garboard.model.HullPickUp;
import garboard.model.Point;
import garboard.model.StrainerPickUp;

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
 * An implementation of the model object '<em><b>Hull Pick Up</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getGratingOpenArea <em>Grating Open Area</em>}</li>
 *   <li>{@link garboard.model.impl.HullPickUpImpl#getLightShipRise <em>Light Ship Rise</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HullPickUpImpl extends MinimalEObjectImpl.Container implements HullPickUp {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final StrainerPickUp KIND_EDEFAULT = StrainerPickUp.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected StrainerPickUp kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getGratingOpenArea() <em>Grating Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGratingOpenArea()
	 * @generated
	 * @ordered
	 */
	protected static final Area GRATING_OPEN_AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGratingOpenArea() <em>Grating Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGratingOpenArea()
	 * @generated
	 * @ordered
	 */
	protected Area gratingOpenArea = GRATING_OPEN_AREA_EDEFAULT;

	/**
	 * The default value of the '{@link #getLightShipRise() <em>Light Ship Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLightShipRise()
	 * @generated
	 * @ordered
	 */
	protected static final Length LIGHT_SHIP_RISE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLightShipRise() <em>Light Ship Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLightShipRise()
	 * @generated
	 * @ordered
	 */
	protected Length lightShipRise = LIGHT_SHIP_RISE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HullPickUpImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.HULL_PICK_UP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StrainerPickUp getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(StrainerPickUp newKind) {
		StrainerPickUp oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__KIND, oldKind, kind));
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__POSITION, oldPosition, newPosition);
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
				msgs = ((InternalEObject)position).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.HULL_PICK_UP__POSITION, null, msgs);
			if (newPosition != null)
				msgs = ((InternalEObject)newPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.HULL_PICK_UP__POSITION, null, msgs);
			msgs = basicSetPosition(newPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__POSITION, newPosition, newPosition));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__BORE, oldBore, bore));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getGratingOpenArea() {
		return gratingOpenArea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGratingOpenArea(Area newGratingOpenArea) {
		Area oldGratingOpenArea = gratingOpenArea;
		gratingOpenArea = newGratingOpenArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__GRATING_OPEN_AREA, oldGratingOpenArea, gratingOpenArea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLightShipRise() {
		return lightShipRise;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLightShipRise(Length newLightShipRise) {
		Length oldLightShipRise = lightShipRise;
		lightShipRise = newLightShipRise;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.HULL_PICK_UP__LIGHT_SHIP_RISE, oldLightShipRise, lightShipRise));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.HULL_PICK_UP__POSITION:
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
			case GarboardPackage.HULL_PICK_UP__KIND:
				return getKind();
			case GarboardPackage.HULL_PICK_UP__POSITION:
				return getPosition();
			case GarboardPackage.HULL_PICK_UP__BORE:
				return getBore();
			case GarboardPackage.HULL_PICK_UP__MATERIAL:
				return getMaterial();
			case GarboardPackage.HULL_PICK_UP__GRATING_OPEN_AREA:
				return getGratingOpenArea();
			case GarboardPackage.HULL_PICK_UP__LIGHT_SHIP_RISE:
				return getLightShipRise();
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
			case GarboardPackage.HULL_PICK_UP__KIND:
				setKind((StrainerPickUp)newValue);
				return;
			case GarboardPackage.HULL_PICK_UP__POSITION:
				setPosition((Point)newValue);
				return;
			case GarboardPackage.HULL_PICK_UP__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.HULL_PICK_UP__MATERIAL:
				setMaterial((FittingMaterial)newValue);
				return;
			case GarboardPackage.HULL_PICK_UP__GRATING_OPEN_AREA:
				setGratingOpenArea((Area)newValue);
				return;
			case GarboardPackage.HULL_PICK_UP__LIGHT_SHIP_RISE:
				setLightShipRise((Length)newValue);
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
			case GarboardPackage.HULL_PICK_UP__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.HULL_PICK_UP__POSITION:
				setPosition((Point)null);
				return;
			case GarboardPackage.HULL_PICK_UP__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.HULL_PICK_UP__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case GarboardPackage.HULL_PICK_UP__GRATING_OPEN_AREA:
				setGratingOpenArea(GRATING_OPEN_AREA_EDEFAULT);
				return;
			case GarboardPackage.HULL_PICK_UP__LIGHT_SHIP_RISE:
				setLightShipRise(LIGHT_SHIP_RISE_EDEFAULT);
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
			case GarboardPackage.HULL_PICK_UP__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.HULL_PICK_UP__POSITION:
				return position != null;
			case GarboardPackage.HULL_PICK_UP__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.HULL_PICK_UP__MATERIAL:
				return material != MATERIAL_EDEFAULT;
			case GarboardPackage.HULL_PICK_UP__GRATING_OPEN_AREA:
				return GRATING_OPEN_AREA_EDEFAULT == null ? gratingOpenArea != null : !GRATING_OPEN_AREA_EDEFAULT.equals(gratingOpenArea);
			case GarboardPackage.HULL_PICK_UP__LIGHT_SHIP_RISE:
				return LIGHT_SHIP_RISE_EDEFAULT == null ? lightShipRise != null : !LIGHT_SHIP_RISE_EDEFAULT.equals(lightShipRise);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", bore: ");
		result.append(bore);
		result.append(", material: ");
		result.append(material);
		result.append(", gratingOpenArea: ");
		result.append(gratingOpenArea);
		result.append(", lightShipRise: ");
		result.append(lightShipRise);
		result.append(')');
		return result.toString();
	}

} //HullPickUpImpl
