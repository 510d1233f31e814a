/**
 */
package garboard.model.impl;

import garboard.model.GarboardPackage;
import garboard.model.StoredVerdict;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stored Verdict</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getCheck <em>Check</em>}</li>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getSubject <em>Subject</em>}</li>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getStanding <em>Standing</em>}</li>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getMeasured <em>Measured</em>}</li>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getLimit <em>Limit</em>}</li>
 *   <li>{@link garboard.model.impl.StoredVerdictImpl#getMargin <em>Margin</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StoredVerdictImpl extends ItemImpl implements StoredVerdict {
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
	 * The default value of the '{@link #getStanding() <em>Standing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStanding()
	 * @generated
	 * @ordered
	 */
	protected static final String STANDING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStanding() <em>Standing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStanding()
	 * @generated
	 * @ordered
	 */
	protected String standing = STANDING_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasured() <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected static final String MEASURED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasured() <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected String measured = MEASURED_EDEFAULT;

	/**
	 * The default value of the '{@link #getLimit() <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimit()
	 * @generated
	 * @ordered
	 */
	protected static final String LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLimit() <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimit()
	 * @generated
	 * @ordered
	 */
	protected String limit = LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected static final String MARGIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected String margin = MARGIN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StoredVerdictImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.STORED_VERDICT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__CHECK, oldCheck, check));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__SUBJECT, oldSubject, subject));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStanding() {
		return standing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStanding(String newStanding) {
		String oldStanding = standing;
		standing = newStanding;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__STANDING, oldStanding, standing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMeasured() {
		return measured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasured(String newMeasured) {
		String oldMeasured = measured;
		measured = newMeasured;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__MEASURED, oldMeasured, measured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLimit() {
		return limit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimit(String newLimit) {
		String oldLimit = limit;
		limit = newLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__LIMIT, oldLimit, limit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMargin() {
		return margin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMargin(String newMargin) {
		String oldMargin = margin;
		margin = newMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.STORED_VERDICT__MARGIN, oldMargin, margin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.STORED_VERDICT__CHECK:
				return getCheck();
			case GarboardPackage.STORED_VERDICT__SUBJECT:
				return getSubject();
			case GarboardPackage.STORED_VERDICT__STANDING:
				return getStanding();
			case GarboardPackage.STORED_VERDICT__MEASURED:
				return getMeasured();
			case GarboardPackage.STORED_VERDICT__LIMIT:
				return getLimit();
			case GarboardPackage.STORED_VERDICT__MARGIN:
				return getMargin();
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
			case GarboardPackage.STORED_VERDICT__CHECK:
				setCheck((String)newValue);
				return;
			case GarboardPackage.STORED_VERDICT__SUBJECT:
				setSubject((String)newValue);
				return;
			case GarboardPackage.STORED_VERDICT__STANDING:
				setStanding((String)newValue);
				return;
			case GarboardPackage.STORED_VERDICT__MEASURED:
				setMeasured((String)newValue);
				return;
			case GarboardPackage.STORED_VERDICT__LIMIT:
				setLimit((String)newValue);
				return;
			case GarboardPackage.STORED_VERDICT__MARGIN:
				setMargin((String)newValue);
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
			case GarboardPackage.STORED_VERDICT__CHECK:
				setCheck(CHECK_EDEFAULT);
				return;
			case GarboardPackage.STORED_VERDICT__SUBJECT:
				setSubject(SUBJECT_EDEFAULT);
				return;
			case GarboardPackage.STORED_VERDICT__STANDING:
				setStanding(STANDING_EDEFAULT);
				return;
			case GarboardPackage.STORED_VERDICT__MEASURED:
				setMeasured(MEASURED_EDEFAULT);
				return;
			case GarboardPackage.STORED_VERDICT__LIMIT:
				setLimit(LIMIT_EDEFAULT);
				return;
			case GarboardPackage.STORED_VERDICT__MARGIN:
				setMargin(MARGIN_EDEFAULT);
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
			case GarboardPackage.STORED_VERDICT__CHECK:
				return CHECK_EDEFAULT == null ? check != null : !CHECK_EDEFAULT.equals(check);
			case GarboardPackage.STORED_VERDICT__SUBJECT:
				return SUBJECT_EDEFAULT == null ? subject != null : !SUBJECT_EDEFAULT.equals(subject);
			case GarboardPackage.STORED_VERDICT__STANDING:
				return STANDING_EDEFAULT == null ? standing != null : !STANDING_EDEFAULT.equals(standing);
			case GarboardPackage.STORED_VERDICT__MEASURED:
				return MEASURED_EDEFAULT == null ? measured != null : !MEASURED_EDEFAULT.equals(measured);
			case GarboardPackage.STORED_VERDICT__LIMIT:
				return LIMIT_EDEFAULT == null ? limit != null : !LIMIT_EDEFAULT.equals(limit);
			case GarboardPackage.STORED_VERDICT__MARGIN:
				return MARGIN_EDEFAULT == null ? margin != null : !MARGIN_EDEFAULT.equals(margin);
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
		result.append(", standing: ");
		result.append(standing);
		result.append(", measured: ");
		result.append(measured);
		result.append(", limit: ");
		result.append(limit);
		result.append(", margin: ");
		result.append(margin);
		result.append(')');
		return result.toString();
	}

} //StoredVerdictImpl
