/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.PolesSwitched;
import garboard.model.TestResult;
import garboard.model.TransferKind;
import garboard.model.TransferSwitch;

import garboard.quantity.Current;
import garboard.quantity.Voltage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Transfer Switch</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getPoles <em>Poles</em>}</li>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getInterlocked <em>Interlocked</em>}</li>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getBackFeedVoltage <em>Back Feed Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getTested <em>Tested</em>}</li>
 *   <li>{@link garboard.model.impl.TransferSwitchImpl#getRatedCurrent <em>Rated Current</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TransferSwitchImpl extends MinimalEObjectImpl.Container implements TransferSwitch {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final TransferKind KIND_EDEFAULT = TransferKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected TransferKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPoles() <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoles()
	 * @generated
	 * @ordered
	 */
	protected static final PolesSwitched POLES_EDEFAULT = PolesSwitched.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPoles() <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoles()
	 * @generated
	 * @ordered
	 */
	protected PolesSwitched poles = POLES_EDEFAULT;

	/**
	 * The default value of the '{@link #getInterlocked() <em>Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInterlocked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer INTERLOCKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInterlocked() <em>Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInterlocked()
	 * @generated
	 * @ordered
	 */
	protected Answer interlocked = INTERLOCKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getBackFeedVoltage() <em>Back Feed Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackFeedVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage BACK_FEED_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBackFeedVoltage() <em>Back Feed Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackFeedVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage backFeedVoltage = BACK_FEED_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTested() <em>Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTested()
	 * @generated
	 * @ordered
	 */
	protected static final TestResult TESTED_EDEFAULT = TestResult.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getTested() <em>Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTested()
	 * @generated
	 * @ordered
	 */
	protected TestResult tested = TESTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedCurrent() <em>Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedCurrent()
	 * @generated
	 * @ordered
	 */
	protected static final Current RATED_CURRENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedCurrent() <em>Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedCurrent()
	 * @generated
	 * @ordered
	 */
	protected Current ratedCurrent = RATED_CURRENT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TransferSwitchImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.TRANSFER_SWITCH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TransferKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(TransferKind newKind) {
		TransferKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PolesSwitched getPoles() {
		return poles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPoles(PolesSwitched newPoles) {
		PolesSwitched oldPoles = poles;
		poles = newPoles == null ? POLES_EDEFAULT : newPoles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__POLES, oldPoles, poles));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInterlocked() {
		return interlocked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInterlocked(Answer newInterlocked) {
		Answer oldInterlocked = interlocked;
		interlocked = newInterlocked == null ? INTERLOCKED_EDEFAULT : newInterlocked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__INTERLOCKED, oldInterlocked, interlocked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getBackFeedVoltage() {
		return backFeedVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBackFeedVoltage(Voltage newBackFeedVoltage) {
		Voltage oldBackFeedVoltage = backFeedVoltage;
		backFeedVoltage = newBackFeedVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__BACK_FEED_VOLTAGE, oldBackFeedVoltage, backFeedVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TestResult getTested() {
		return tested;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTested(TestResult newTested) {
		TestResult oldTested = tested;
		tested = newTested == null ? TESTED_EDEFAULT : newTested;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__TESTED, oldTested, tested));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getRatedCurrent() {
		return ratedCurrent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedCurrent(Current newRatedCurrent) {
		Current oldRatedCurrent = ratedCurrent;
		ratedCurrent = newRatedCurrent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRANSFER_SWITCH__RATED_CURRENT, oldRatedCurrent, ratedCurrent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.TRANSFER_SWITCH__KIND:
				return getKind();
			case GarboardPackage.TRANSFER_SWITCH__POLES:
				return getPoles();
			case GarboardPackage.TRANSFER_SWITCH__INTERLOCKED:
				return getInterlocked();
			case GarboardPackage.TRANSFER_SWITCH__BACK_FEED_VOLTAGE:
				return getBackFeedVoltage();
			case GarboardPackage.TRANSFER_SWITCH__TESTED:
				return getTested();
			case GarboardPackage.TRANSFER_SWITCH__RATED_CURRENT:
				return getRatedCurrent();
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
			case GarboardPackage.TRANSFER_SWITCH__KIND:
				setKind((TransferKind)newValue);
				return;
			case GarboardPackage.TRANSFER_SWITCH__POLES:
				setPoles((PolesSwitched)newValue);
				return;
			case GarboardPackage.TRANSFER_SWITCH__INTERLOCKED:
				setInterlocked((Answer)newValue);
				return;
			case GarboardPackage.TRANSFER_SWITCH__BACK_FEED_VOLTAGE:
				setBackFeedVoltage((Voltage)newValue);
				return;
			case GarboardPackage.TRANSFER_SWITCH__TESTED:
				setTested((TestResult)newValue);
				return;
			case GarboardPackage.TRANSFER_SWITCH__RATED_CURRENT:
				setRatedCurrent((Current)newValue);
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
			case GarboardPackage.TRANSFER_SWITCH__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.TRANSFER_SWITCH__POLES:
				setPoles(POLES_EDEFAULT);
				return;
			case GarboardPackage.TRANSFER_SWITCH__INTERLOCKED:
				setInterlocked(INTERLOCKED_EDEFAULT);
				return;
			case GarboardPackage.TRANSFER_SWITCH__BACK_FEED_VOLTAGE:
				setBackFeedVoltage(BACK_FEED_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.TRANSFER_SWITCH__TESTED:
				setTested(TESTED_EDEFAULT);
				return;
			case GarboardPackage.TRANSFER_SWITCH__RATED_CURRENT:
				setRatedCurrent(RATED_CURRENT_EDEFAULT);
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
			case GarboardPackage.TRANSFER_SWITCH__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.TRANSFER_SWITCH__POLES:
				return poles != POLES_EDEFAULT;
			case GarboardPackage.TRANSFER_SWITCH__INTERLOCKED:
				return interlocked != INTERLOCKED_EDEFAULT;
			case GarboardPackage.TRANSFER_SWITCH__BACK_FEED_VOLTAGE:
				return BACK_FEED_VOLTAGE_EDEFAULT == null ? backFeedVoltage != null : !BACK_FEED_VOLTAGE_EDEFAULT.equals(backFeedVoltage);
			case GarboardPackage.TRANSFER_SWITCH__TESTED:
				return tested != TESTED_EDEFAULT;
			case GarboardPackage.TRANSFER_SWITCH__RATED_CURRENT:
				return RATED_CURRENT_EDEFAULT == null ? ratedCurrent != null : !RATED_CURRENT_EDEFAULT.equals(ratedCurrent);
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
		result.append(", poles: ");
		result.append(poles);
		result.append(", interlocked: ");
		result.append(interlocked);
		result.append(", backFeedVoltage: ");
		result.append(backFeedVoltage);
		result.append(", tested: ");
		result.append(tested);
		result.append(", ratedCurrent: ");
		result.append(ratedCurrent);
		result.append(')');
		return result.toString();
	}

} //TransferSwitchImpl
