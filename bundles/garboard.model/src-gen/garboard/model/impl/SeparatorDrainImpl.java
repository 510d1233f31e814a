/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.SeparatorDrain;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Separator Drain</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.SeparatorDrainImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.SeparatorDrainImpl#getBaseHeight <em>Base Height</em>}</li>
 *   <li>{@link garboard.model.impl.SeparatorDrainImpl#getOwnSeacock <em>Own Seacock</em>}</li>
 *   <li>{@link garboard.model.impl.SeparatorDrainImpl#getFallsAllTheWay <em>Falls All The Way</em>}</li>
 *   <li>{@link garboard.model.impl.SeparatorDrainImpl#getGasSidePressure <em>Gas Side Pressure</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SeparatorDrainImpl extends MinimalEObjectImpl.Container implements SeparatorDrain {
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
	 * The default value of the '{@link #getBaseHeight() <em>Base Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length BASE_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBaseHeight() <em>Base Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaseHeight()
	 * @generated
	 * @ordered
	 */
	protected Length baseHeight = BASE_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnSeacock() <em>Own Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSeacock()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OWN_SEACOCK_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOwnSeacock() <em>Own Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSeacock()
	 * @generated
	 * @ordered
	 */
	protected Answer ownSeacock = OWN_SEACOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getFallsAllTheWay() <em>Falls All The Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFallsAllTheWay()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FALLS_ALL_THE_WAY_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFallsAllTheWay() <em>Falls All The Way</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFallsAllTheWay()
	 * @generated
	 * @ordered
	 */
	protected Answer fallsAllTheWay = FALLS_ALL_THE_WAY_EDEFAULT;

	/**
	 * The default value of the '{@link #getGasSidePressure() <em>Gas Side Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasSidePressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure GAS_SIDE_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGasSidePressure() <em>Gas Side Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasSidePressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure gasSidePressure = GAS_SIDE_PRESSURE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SeparatorDrainImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.SEPARATOR_DRAIN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEPARATOR_DRAIN__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBaseHeight() {
		return baseHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseHeight(Length newBaseHeight) {
		Length oldBaseHeight = baseHeight;
		baseHeight = newBaseHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEPARATOR_DRAIN__BASE_HEIGHT, oldBaseHeight, baseHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOwnSeacock() {
		return ownSeacock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnSeacock(Answer newOwnSeacock) {
		Answer oldOwnSeacock = ownSeacock;
		ownSeacock = newOwnSeacock == null ? OWN_SEACOCK_EDEFAULT : newOwnSeacock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEPARATOR_DRAIN__OWN_SEACOCK, oldOwnSeacock, ownSeacock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFallsAllTheWay() {
		return fallsAllTheWay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFallsAllTheWay(Answer newFallsAllTheWay) {
		Answer oldFallsAllTheWay = fallsAllTheWay;
		fallsAllTheWay = newFallsAllTheWay == null ? FALLS_ALL_THE_WAY_EDEFAULT : newFallsAllTheWay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY, oldFallsAllTheWay, fallsAllTheWay));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getGasSidePressure() {
		return gasSidePressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGasSidePressure(GaugePressure newGasSidePressure) {
		GaugePressure oldGasSidePressure = gasSidePressure;
		gasSidePressure = newGasSidePressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE, oldGasSidePressure, gasSidePressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.SEPARATOR_DRAIN__BORE:
				return getBore();
			case GarboardPackage.SEPARATOR_DRAIN__BASE_HEIGHT:
				return getBaseHeight();
			case GarboardPackage.SEPARATOR_DRAIN__OWN_SEACOCK:
				return getOwnSeacock();
			case GarboardPackage.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY:
				return getFallsAllTheWay();
			case GarboardPackage.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE:
				return getGasSidePressure();
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
			case GarboardPackage.SEPARATOR_DRAIN__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__BASE_HEIGHT:
				setBaseHeight((Length)newValue);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__OWN_SEACOCK:
				setOwnSeacock((Answer)newValue);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY:
				setFallsAllTheWay((Answer)newValue);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE:
				setGasSidePressure((GaugePressure)newValue);
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
			case GarboardPackage.SEPARATOR_DRAIN__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__BASE_HEIGHT:
				setBaseHeight(BASE_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__OWN_SEACOCK:
				setOwnSeacock(OWN_SEACOCK_EDEFAULT);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY:
				setFallsAllTheWay(FALLS_ALL_THE_WAY_EDEFAULT);
				return;
			case GarboardPackage.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE:
				setGasSidePressure(GAS_SIDE_PRESSURE_EDEFAULT);
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
			case GarboardPackage.SEPARATOR_DRAIN__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.SEPARATOR_DRAIN__BASE_HEIGHT:
				return BASE_HEIGHT_EDEFAULT == null ? baseHeight != null : !BASE_HEIGHT_EDEFAULT.equals(baseHeight);
			case GarboardPackage.SEPARATOR_DRAIN__OWN_SEACOCK:
				return ownSeacock != OWN_SEACOCK_EDEFAULT;
			case GarboardPackage.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY:
				return fallsAllTheWay != FALLS_ALL_THE_WAY_EDEFAULT;
			case GarboardPackage.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE:
				return GAS_SIDE_PRESSURE_EDEFAULT == null ? gasSidePressure != null : !GAS_SIDE_PRESSURE_EDEFAULT.equals(gasSidePressure);
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
		result.append(" (bore: ");
		result.append(bore);
		result.append(", baseHeight: ");
		result.append(baseHeight);
		result.append(", ownSeacock: ");
		result.append(ownSeacock);
		result.append(", fallsAllTheWay: ");
		result.append(fallsAllTheWay);
		result.append(", gasSidePressure: ");
		result.append(gasSidePressure);
		result.append(')');
		return result.toString();
	}

} //SeparatorDrainImpl
