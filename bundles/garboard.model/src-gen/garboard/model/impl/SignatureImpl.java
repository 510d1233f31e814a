/**
 */
package garboard.model.impl;

import garboard.model.GarboardPackage;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.model.StoredVerdict;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Signature</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.SignatureImpl#getRole <em>Role</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getLicence <em>Licence</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getSignedOn <em>Signed On</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getStatement <em>Statement</em>}</li>
 *   <li>{@link garboard.model.impl.SignatureImpl#getVerdicts <em>Verdicts</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SignatureImpl extends ItemImpl implements Signature {
	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final SignatureRole ROLE_EDEFAULT = SignatureRole.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected SignatureRole role = ROLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getLicence() <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLicence()
	 * @generated
	 * @ordered
	 */
	protected static final String LICENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLicence() <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLicence()
	 * @generated
	 * @ordered
	 */
	protected String licence = LICENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final String PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected String place = PLACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSignedOn() <em>Signed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SIGNED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSignedOn() <em>Signed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSignedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate signedOn = SIGNED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getStatement() <em>Statement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatement()
	 * @generated
	 * @ordered
	 */
	protected static final String STATEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStatement() <em>Statement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatement()
	 * @generated
	 * @ordered
	 */
	protected String statement = STATEMENT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getVerdicts() <em>Verdicts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerdicts()
	 * @generated
	 * @ordered
	 */
	protected EList<StoredVerdict> verdicts;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SignatureImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.SIGNATURE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SignatureRole getRole() {
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(SignatureRole newRole) {
		SignatureRole oldRole = role;
		role = newRole == null ? ROLE_EDEFAULT : newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLicence() {
		return licence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLicence(String newLicence) {
		String oldLicence = licence;
		licence = newLicence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__LICENCE, oldLicence, licence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(String newPlace) {
		String oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getSignedOn() {
		return signedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSignedOn(LocalDate newSignedOn) {
		LocalDate oldSignedOn = signedOn;
		signedOn = newSignedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__SIGNED_ON, oldSignedOn, signedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStatement() {
		return statement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStatement(String newStatement) {
		String oldStatement = statement;
		statement = newStatement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIGNATURE__STATEMENT, oldStatement, statement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StoredVerdict> getVerdicts() {
		if (verdicts == null) {
			verdicts = new EObjectContainmentEList<StoredVerdict>(StoredVerdict.class, this, GarboardPackage.SIGNATURE__VERDICTS);
		}
		return verdicts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.SIGNATURE__VERDICTS:
				return ((InternalEList<?>)getVerdicts()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.SIGNATURE__ROLE:
				return getRole();
			case GarboardPackage.SIGNATURE__NAME:
				return getName();
			case GarboardPackage.SIGNATURE__LICENCE:
				return getLicence();
			case GarboardPackage.SIGNATURE__PLACE:
				return getPlace();
			case GarboardPackage.SIGNATURE__SIGNED_ON:
				return getSignedOn();
			case GarboardPackage.SIGNATURE__STATEMENT:
				return getStatement();
			case GarboardPackage.SIGNATURE__VERDICTS:
				return getVerdicts();
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
			case GarboardPackage.SIGNATURE__ROLE:
				setRole((SignatureRole)newValue);
				return;
			case GarboardPackage.SIGNATURE__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.SIGNATURE__LICENCE:
				setLicence((String)newValue);
				return;
			case GarboardPackage.SIGNATURE__PLACE:
				setPlace((String)newValue);
				return;
			case GarboardPackage.SIGNATURE__SIGNED_ON:
				setSignedOn((LocalDate)newValue);
				return;
			case GarboardPackage.SIGNATURE__STATEMENT:
				setStatement((String)newValue);
				return;
			case GarboardPackage.SIGNATURE__VERDICTS:
				getVerdicts().clear();
				getVerdicts().addAll((Collection<? extends StoredVerdict>)newValue);
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
			case GarboardPackage.SIGNATURE__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__LICENCE:
				setLicence(LICENCE_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__SIGNED_ON:
				setSignedOn(SIGNED_ON_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__STATEMENT:
				setStatement(STATEMENT_EDEFAULT);
				return;
			case GarboardPackage.SIGNATURE__VERDICTS:
				getVerdicts().clear();
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
			case GarboardPackage.SIGNATURE__ROLE:
				return role != ROLE_EDEFAULT;
			case GarboardPackage.SIGNATURE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.SIGNATURE__LICENCE:
				return LICENCE_EDEFAULT == null ? licence != null : !LICENCE_EDEFAULT.equals(licence);
			case GarboardPackage.SIGNATURE__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
			case GarboardPackage.SIGNATURE__SIGNED_ON:
				return SIGNED_ON_EDEFAULT == null ? signedOn != null : !SIGNED_ON_EDEFAULT.equals(signedOn);
			case GarboardPackage.SIGNATURE__STATEMENT:
				return STATEMENT_EDEFAULT == null ? statement != null : !STATEMENT_EDEFAULT.equals(statement);
			case GarboardPackage.SIGNATURE__VERDICTS:
				return verdicts != null && !verdicts.isEmpty();
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
		result.append(" (role: ");
		result.append(role);
		result.append(", name: ");
		result.append(name);
		result.append(", licence: ");
		result.append(licence);
		result.append(", place: ");
		result.append(place);
		result.append(", signedOn: ");
		result.append(signedOn);
		result.append(", statement: ");
		result.append(statement);
		result.append(')');
		return result.toString();
	}

} //SignatureImpl
