/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.model.Riser;

import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Riser</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.RiserImpl#getDryCrestInside <em>Dry Crest Inside</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getInjectionOnFallingLeg <em>Injection On Falling Leg</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getInjectionPointsDown <em>Injection Points Down</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getInjectionDropToMuffler <em>Injection Drop To Muffler</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getLiftHeight <em>Lift Height</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getElbowBore <em>Elbow Bore</em>}</li>
 *   <li>{@link garboard.model.impl.RiserImpl#getElbowInspectedOn <em>Elbow Inspected On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RiserImpl extends MinimalEObjectImpl.Container implements Riser {
	/**
	 * The cached value of the '{@link #getDryCrestInside() <em>Dry Crest Inside</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryCrestInside()
	 * @generated
	 * @ordered
	 */
	protected Point dryCrestInside;

	/**
	 * The default value of the '{@link #getInjectionOnFallingLeg() <em>Injection On Falling Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionOnFallingLeg()
	 * @generated
	 * @ordered
	 */
	protected static final Answer INJECTION_ON_FALLING_LEG_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInjectionOnFallingLeg() <em>Injection On Falling Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionOnFallingLeg()
	 * @generated
	 * @ordered
	 */
	protected Answer injectionOnFallingLeg = INJECTION_ON_FALLING_LEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getInjectionPointsDown() <em>Injection Points Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionPointsDown()
	 * @generated
	 * @ordered
	 */
	protected static final Answer INJECTION_POINTS_DOWN_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInjectionPointsDown() <em>Injection Points Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionPointsDown()
	 * @generated
	 * @ordered
	 */
	protected Answer injectionPointsDown = INJECTION_POINTS_DOWN_EDEFAULT;

	/**
	 * The default value of the '{@link #getInjectionDropToMuffler() <em>Injection Drop To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionDropToMuffler()
	 * @generated
	 * @ordered
	 */
	protected static final Length INJECTION_DROP_TO_MUFFLER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInjectionDropToMuffler() <em>Injection Drop To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInjectionDropToMuffler()
	 * @generated
	 * @ordered
	 */
	protected Length injectionDropToMuffler = INJECTION_DROP_TO_MUFFLER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLiftHeight() <em>Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiftHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length LIFT_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLiftHeight() <em>Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiftHeight()
	 * @generated
	 * @ordered
	 */
	protected Length liftHeight = LIFT_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getElbowBore() <em>Elbow Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElbowBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length ELBOW_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElbowBore() <em>Elbow Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElbowBore()
	 * @generated
	 * @ordered
	 */
	protected Length elbowBore = ELBOW_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getElbowInspectedOn() <em>Elbow Inspected On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElbowInspectedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ELBOW_INSPECTED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElbowInspectedOn() <em>Elbow Inspected On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElbowInspectedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate elbowInspectedOn = ELBOW_INSPECTED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RiserImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.RISER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getDryCrestInside() {
		return dryCrestInside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetDryCrestInside(Point newDryCrestInside, NotificationChain msgs) {
		Point oldDryCrestInside = dryCrestInside;
		dryCrestInside = newDryCrestInside;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__DRY_CREST_INSIDE, oldDryCrestInside, newDryCrestInside);
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
	public void setDryCrestInside(Point newDryCrestInside) {
		if (newDryCrestInside != dryCrestInside) {
			NotificationChain msgs = null;
			if (dryCrestInside != null)
				msgs = ((InternalEObject)dryCrestInside).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RISER__DRY_CREST_INSIDE, null, msgs);
			if (newDryCrestInside != null)
				msgs = ((InternalEObject)newDryCrestInside).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.RISER__DRY_CREST_INSIDE, null, msgs);
			msgs = basicSetDryCrestInside(newDryCrestInside, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__DRY_CREST_INSIDE, newDryCrestInside, newDryCrestInside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInjectionOnFallingLeg() {
		return injectionOnFallingLeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInjectionOnFallingLeg(Answer newInjectionOnFallingLeg) {
		Answer oldInjectionOnFallingLeg = injectionOnFallingLeg;
		injectionOnFallingLeg = newInjectionOnFallingLeg == null ? INJECTION_ON_FALLING_LEG_EDEFAULT : newInjectionOnFallingLeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__INJECTION_ON_FALLING_LEG, oldInjectionOnFallingLeg, injectionOnFallingLeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInjectionPointsDown() {
		return injectionPointsDown;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInjectionPointsDown(Answer newInjectionPointsDown) {
		Answer oldInjectionPointsDown = injectionPointsDown;
		injectionPointsDown = newInjectionPointsDown == null ? INJECTION_POINTS_DOWN_EDEFAULT : newInjectionPointsDown;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__INJECTION_POINTS_DOWN, oldInjectionPointsDown, injectionPointsDown));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getInjectionDropToMuffler() {
		return injectionDropToMuffler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInjectionDropToMuffler(Length newInjectionDropToMuffler) {
		Length oldInjectionDropToMuffler = injectionDropToMuffler;
		injectionDropToMuffler = newInjectionDropToMuffler;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__INJECTION_DROP_TO_MUFFLER, oldInjectionDropToMuffler, injectionDropToMuffler));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLiftHeight() {
		return liftHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLiftHeight(Length newLiftHeight) {
		Length oldLiftHeight = liftHeight;
		liftHeight = newLiftHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__LIFT_HEIGHT, oldLiftHeight, liftHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getElbowBore() {
		return elbowBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElbowBore(Length newElbowBore) {
		Length oldElbowBore = elbowBore;
		elbowBore = newElbowBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__ELBOW_BORE, oldElbowBore, elbowBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getElbowInspectedOn() {
		return elbowInspectedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElbowInspectedOn(LocalDate newElbowInspectedOn) {
		LocalDate oldElbowInspectedOn = elbowInspectedOn;
		elbowInspectedOn = newElbowInspectedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.RISER__ELBOW_INSPECTED_ON, oldElbowInspectedOn, elbowInspectedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.RISER__DRY_CREST_INSIDE:
				return basicSetDryCrestInside(null, msgs);
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
			case GarboardPackage.RISER__DRY_CREST_INSIDE:
				return getDryCrestInside();
			case GarboardPackage.RISER__INJECTION_ON_FALLING_LEG:
				return getInjectionOnFallingLeg();
			case GarboardPackage.RISER__INJECTION_POINTS_DOWN:
				return getInjectionPointsDown();
			case GarboardPackage.RISER__INJECTION_DROP_TO_MUFFLER:
				return getInjectionDropToMuffler();
			case GarboardPackage.RISER__LIFT_HEIGHT:
				return getLiftHeight();
			case GarboardPackage.RISER__ELBOW_BORE:
				return getElbowBore();
			case GarboardPackage.RISER__ELBOW_INSPECTED_ON:
				return getElbowInspectedOn();
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
			case GarboardPackage.RISER__DRY_CREST_INSIDE:
				setDryCrestInside((Point)newValue);
				return;
			case GarboardPackage.RISER__INJECTION_ON_FALLING_LEG:
				setInjectionOnFallingLeg((Answer)newValue);
				return;
			case GarboardPackage.RISER__INJECTION_POINTS_DOWN:
				setInjectionPointsDown((Answer)newValue);
				return;
			case GarboardPackage.RISER__INJECTION_DROP_TO_MUFFLER:
				setInjectionDropToMuffler((Length)newValue);
				return;
			case GarboardPackage.RISER__LIFT_HEIGHT:
				setLiftHeight((Length)newValue);
				return;
			case GarboardPackage.RISER__ELBOW_BORE:
				setElbowBore((Length)newValue);
				return;
			case GarboardPackage.RISER__ELBOW_INSPECTED_ON:
				setElbowInspectedOn((LocalDate)newValue);
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
			case GarboardPackage.RISER__DRY_CREST_INSIDE:
				setDryCrestInside((Point)null);
				return;
			case GarboardPackage.RISER__INJECTION_ON_FALLING_LEG:
				setInjectionOnFallingLeg(INJECTION_ON_FALLING_LEG_EDEFAULT);
				return;
			case GarboardPackage.RISER__INJECTION_POINTS_DOWN:
				setInjectionPointsDown(INJECTION_POINTS_DOWN_EDEFAULT);
				return;
			case GarboardPackage.RISER__INJECTION_DROP_TO_MUFFLER:
				setInjectionDropToMuffler(INJECTION_DROP_TO_MUFFLER_EDEFAULT);
				return;
			case GarboardPackage.RISER__LIFT_HEIGHT:
				setLiftHeight(LIFT_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.RISER__ELBOW_BORE:
				setElbowBore(ELBOW_BORE_EDEFAULT);
				return;
			case GarboardPackage.RISER__ELBOW_INSPECTED_ON:
				setElbowInspectedOn(ELBOW_INSPECTED_ON_EDEFAULT);
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
			case GarboardPackage.RISER__DRY_CREST_INSIDE:
				return dryCrestInside != null;
			case GarboardPackage.RISER__INJECTION_ON_FALLING_LEG:
				return injectionOnFallingLeg != INJECTION_ON_FALLING_LEG_EDEFAULT;
			case GarboardPackage.RISER__INJECTION_POINTS_DOWN:
				return injectionPointsDown != INJECTION_POINTS_DOWN_EDEFAULT;
			case GarboardPackage.RISER__INJECTION_DROP_TO_MUFFLER:
				return INJECTION_DROP_TO_MUFFLER_EDEFAULT == null ? injectionDropToMuffler != null : !INJECTION_DROP_TO_MUFFLER_EDEFAULT.equals(injectionDropToMuffler);
			case GarboardPackage.RISER__LIFT_HEIGHT:
				return LIFT_HEIGHT_EDEFAULT == null ? liftHeight != null : !LIFT_HEIGHT_EDEFAULT.equals(liftHeight);
			case GarboardPackage.RISER__ELBOW_BORE:
				return ELBOW_BORE_EDEFAULT == null ? elbowBore != null : !ELBOW_BORE_EDEFAULT.equals(elbowBore);
			case GarboardPackage.RISER__ELBOW_INSPECTED_ON:
				return ELBOW_INSPECTED_ON_EDEFAULT == null ? elbowInspectedOn != null : !ELBOW_INSPECTED_ON_EDEFAULT.equals(elbowInspectedOn);
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
		result.append(" (injectionOnFallingLeg: ");
		result.append(injectionOnFallingLeg);
		result.append(", injectionPointsDown: ");
		result.append(injectionPointsDown);
		result.append(", injectionDropToMuffler: ");
		result.append(injectionDropToMuffler);
		result.append(", liftHeight: ");
		result.append(liftHeight);
		result.append(", elbowBore: ");
		result.append(elbowBore);
		result.append(", elbowInspectedOn: ");
		result.append(elbowInspectedOn);
		result.append(')');
		return result.toString();
	}

} //RiserImpl
