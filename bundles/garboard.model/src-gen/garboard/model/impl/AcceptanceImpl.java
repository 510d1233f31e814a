/**
 */
package garboard.model.impl;

import garboard.model.Acceptance;
import garboard.model.GarboardPackage;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Acceptance</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getCheck <em>Check</em>}</li>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getSubject <em>Subject</em>}</li>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getAcceptedBy <em>Accepted By</em>}</li>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getAcceptedOn <em>Accepted On</em>}</li>
 *   <li>{@link garboard.model.impl.AcceptanceImpl#getUntil <em>Until</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AcceptanceImpl extends ItemImpl implements Acceptance {
	/**
	 * The default value of the '{@link #getCheck() <em>Check</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheck()
	 * @generated
	 * @ordered
	 */
	protected static final String CHECK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheck() <em>Check</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheck()
	 * @generated
	 * @ordered
	 */
	protected String check = CHECK_EDEFAULT;

	/**
	 * The default value of the '{@link #getSubject() <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubject()
	 * @generated
	 * @ordered
	 */
	protected static final String SUBJECT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSubject() <em>Subject</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSubject()
	 * @generated
	 * @ordered
	 */
	protected String subject = SUBJECT_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * The default value of the '{@link #getAcceptedBy() <em>Accepted By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcceptedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String ACCEPTED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAcceptedBy() <em>Accepted By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcceptedBy()
	 * @generated
	 * @ordered
	 */
	protected String acceptedBy = ACCEPTED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAcceptedOn() <em>Accepted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcceptedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ACCEPTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAcceptedOn() <em>Accepted On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAcceptedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate acceptedOn = ACCEPTED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getUntil() <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUntil()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate UNTIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUntil() <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUntil()
	 * @generated
	 * @ordered
	 */
	protected LocalDate until = UNTIL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AcceptanceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.ACCEPTANCE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCheck() {
		return check;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheck(String newCheck) {
		String oldCheck = check;
		check = newCheck;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__CHECK, oldCheck, check));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSubject() {
		return subject;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSubject(String newSubject) {
		String oldSubject = subject;
		subject = newSubject;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__SUBJECT, oldSubject, subject));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAcceptedBy() {
		return acceptedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAcceptedBy(String newAcceptedBy) {
		String oldAcceptedBy = acceptedBy;
		acceptedBy = newAcceptedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__ACCEPTED_BY, oldAcceptedBy, acceptedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getAcceptedOn() {
		return acceptedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAcceptedOn(LocalDate newAcceptedOn) {
		LocalDate oldAcceptedOn = acceptedOn;
		acceptedOn = newAcceptedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__ACCEPTED_ON, oldAcceptedOn, acceptedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getUntil() {
		return until;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUntil(LocalDate newUntil) {
		LocalDate oldUntil = until;
		until = newUntil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.ACCEPTANCE__UNTIL, oldUntil, until));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.ACCEPTANCE__CHECK:
				return getCheck();
			case GarboardPackage.ACCEPTANCE__SUBJECT:
				return getSubject();
			case GarboardPackage.ACCEPTANCE__REASON:
				return getReason();
			case GarboardPackage.ACCEPTANCE__ACCEPTED_BY:
				return getAcceptedBy();
			case GarboardPackage.ACCEPTANCE__ACCEPTED_ON:
				return getAcceptedOn();
			case GarboardPackage.ACCEPTANCE__UNTIL:
				return getUntil();
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
			case GarboardPackage.ACCEPTANCE__CHECK:
				setCheck((String)newValue);
				return;
			case GarboardPackage.ACCEPTANCE__SUBJECT:
				setSubject((String)newValue);
				return;
			case GarboardPackage.ACCEPTANCE__REASON:
				setReason((String)newValue);
				return;
			case GarboardPackage.ACCEPTANCE__ACCEPTED_BY:
				setAcceptedBy((String)newValue);
				return;
			case GarboardPackage.ACCEPTANCE__ACCEPTED_ON:
				setAcceptedOn((LocalDate)newValue);
				return;
			case GarboardPackage.ACCEPTANCE__UNTIL:
				setUntil((LocalDate)newValue);
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
			case GarboardPackage.ACCEPTANCE__CHECK:
				setCheck(CHECK_EDEFAULT);
				return;
			case GarboardPackage.ACCEPTANCE__SUBJECT:
				setSubject(SUBJECT_EDEFAULT);
				return;
			case GarboardPackage.ACCEPTANCE__REASON:
				setReason(REASON_EDEFAULT);
				return;
			case GarboardPackage.ACCEPTANCE__ACCEPTED_BY:
				setAcceptedBy(ACCEPTED_BY_EDEFAULT);
				return;
			case GarboardPackage.ACCEPTANCE__ACCEPTED_ON:
				setAcceptedOn(ACCEPTED_ON_EDEFAULT);
				return;
			case GarboardPackage.ACCEPTANCE__UNTIL:
				setUntil(UNTIL_EDEFAULT);
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
			case GarboardPackage.ACCEPTANCE__CHECK:
				return CHECK_EDEFAULT == null ? check != null : !CHECK_EDEFAULT.equals(check);
			case GarboardPackage.ACCEPTANCE__SUBJECT:
				return SUBJECT_EDEFAULT == null ? subject != null : !SUBJECT_EDEFAULT.equals(subject);
			case GarboardPackage.ACCEPTANCE__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
			case GarboardPackage.ACCEPTANCE__ACCEPTED_BY:
				return ACCEPTED_BY_EDEFAULT == null ? acceptedBy != null : !ACCEPTED_BY_EDEFAULT.equals(acceptedBy);
			case GarboardPackage.ACCEPTANCE__ACCEPTED_ON:
				return ACCEPTED_ON_EDEFAULT == null ? acceptedOn != null : !ACCEPTED_ON_EDEFAULT.equals(acceptedOn);
			case GarboardPackage.ACCEPTANCE__UNTIL:
				return UNTIL_EDEFAULT == null ? until != null : !UNTIL_EDEFAULT.equals(until);
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
		result.append(" (check: ");
		result.append(check);
		result.append(", subject: ");
		result.append(subject);
		result.append(", reason: ");
		result.append(reason);
		result.append(", acceptedBy: ");
		result.append(acceptedBy);
		result.append(", acceptedOn: ");
		result.append(acceptedOn);
		result.append(", until: ");
		result.append(until);
		result.append(')');
		return result.toString();
	}

} //AcceptanceImpl
