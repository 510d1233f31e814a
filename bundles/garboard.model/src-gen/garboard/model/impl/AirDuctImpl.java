/**
 */
package garboard.model.impl;

import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.DuctFunction;
import garboard.model.GarboardPackage;

import garboard.quantity.Area;
import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Air Duct</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getArea <em>Area</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getEndFittingArea <em>End Fitting Area</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getFlexible <em>Flexible</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getMouthHeight <em>Mouth Height</em>}</li>
 *   <li>{@link garboard.model.impl.AirDuctImpl#getTerminatesOutside <em>Terminates Outside</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AirDuctImpl extends ItemImpl implements AirDuct {
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
	 * The default value of the '{@link #getFunction() <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFunction()
	 * @generated
	 * @ordered
	 */
	protected static final DuctFunction FUNCTION_EDEFAULT = DuctFunction.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getFunction() <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFunction()
	 * @generated
	 * @ordered
	 */
	protected DuctFunction function = FUNCTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getArea() <em>Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArea()
	 * @generated
	 * @ordered
	 */
	protected static final Area AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getArea() <em>Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArea()
	 * @generated
	 * @ordered
	 */
	protected Area area = AREA_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndFittingArea() <em>End Fitting Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndFittingArea()
	 * @generated
	 * @ordered
	 */
	protected static final Area END_FITTING_AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEndFittingArea() <em>End Fitting Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndFittingArea()
	 * @generated
	 * @ordered
	 */
	protected Area endFittingArea = END_FITTING_AREA_EDEFAULT;

	/**
	 * The default value of the '{@link #getFlexible() <em>Flexible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexible()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FLEXIBLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFlexible() <em>Flexible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlexible()
	 * @generated
	 * @ordered
	 */
	protected Answer flexible = FLEXIBLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMouthHeight() <em>Mouth Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouthHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length MOUTH_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMouthHeight() <em>Mouth Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMouthHeight()
	 * @generated
	 * @ordered
	 */
	protected Length mouthHeight = MOUTH_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTerminatesOutside() <em>Terminates Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerminatesOutside()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TERMINATES_OUTSIDE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTerminatesOutside() <em>Terminates Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerminatesOutside()
	 * @generated
	 * @ordered
	 */
	protected Answer terminatesOutside = TERMINATES_OUTSIDE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AirDuctImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.AIR_DUCT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DuctFunction getFunction() {
		return function;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFunction(DuctFunction newFunction) {
		DuctFunction oldFunction = function;
		function = newFunction == null ? FUNCTION_EDEFAULT : newFunction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__FUNCTION, oldFunction, function));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getArea() {
		return area;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArea(Area newArea) {
		Area oldArea = area;
		area = newArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__AREA, oldArea, area));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getEndFittingArea() {
		return endFittingArea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndFittingArea(Area newEndFittingArea) {
		Area oldEndFittingArea = endFittingArea;
		endFittingArea = newEndFittingArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__END_FITTING_AREA, oldEndFittingArea, endFittingArea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFlexible() {
		return flexible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlexible(Answer newFlexible) {
		Answer oldFlexible = flexible;
		flexible = newFlexible == null ? FLEXIBLE_EDEFAULT : newFlexible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__FLEXIBLE, oldFlexible, flexible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMouthHeight() {
		return mouthHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMouthHeight(Length newMouthHeight) {
		Length oldMouthHeight = mouthHeight;
		mouthHeight = newMouthHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__MOUTH_HEIGHT, oldMouthHeight, mouthHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTerminatesOutside() {
		return terminatesOutside;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTerminatesOutside(Answer newTerminatesOutside) {
		Answer oldTerminatesOutside = terminatesOutside;
		terminatesOutside = newTerminatesOutside == null ? TERMINATES_OUTSIDE_EDEFAULT : newTerminatesOutside;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.AIR_DUCT__TERMINATES_OUTSIDE, oldTerminatesOutside, terminatesOutside));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.AIR_DUCT__NAME:
				return getName();
			case GarboardPackage.AIR_DUCT__FUNCTION:
				return getFunction();
			case GarboardPackage.AIR_DUCT__AREA:
				return getArea();
			case GarboardPackage.AIR_DUCT__END_FITTING_AREA:
				return getEndFittingArea();
			case GarboardPackage.AIR_DUCT__FLEXIBLE:
				return getFlexible();
			case GarboardPackage.AIR_DUCT__MOUTH_HEIGHT:
				return getMouthHeight();
			case GarboardPackage.AIR_DUCT__TERMINATES_OUTSIDE:
				return getTerminatesOutside();
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
			case GarboardPackage.AIR_DUCT__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.AIR_DUCT__FUNCTION:
				setFunction((DuctFunction)newValue);
				return;
			case GarboardPackage.AIR_DUCT__AREA:
				setArea((Area)newValue);
				return;
			case GarboardPackage.AIR_DUCT__END_FITTING_AREA:
				setEndFittingArea((Area)newValue);
				return;
			case GarboardPackage.AIR_DUCT__FLEXIBLE:
				setFlexible((Answer)newValue);
				return;
			case GarboardPackage.AIR_DUCT__MOUTH_HEIGHT:
				setMouthHeight((Length)newValue);
				return;
			case GarboardPackage.AIR_DUCT__TERMINATES_OUTSIDE:
				setTerminatesOutside((Answer)newValue);
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
			case GarboardPackage.AIR_DUCT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__FUNCTION:
				setFunction(FUNCTION_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__AREA:
				setArea(AREA_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__END_FITTING_AREA:
				setEndFittingArea(END_FITTING_AREA_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__FLEXIBLE:
				setFlexible(FLEXIBLE_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__MOUTH_HEIGHT:
				setMouthHeight(MOUTH_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.AIR_DUCT__TERMINATES_OUTSIDE:
				setTerminatesOutside(TERMINATES_OUTSIDE_EDEFAULT);
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
			case GarboardPackage.AIR_DUCT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.AIR_DUCT__FUNCTION:
				return function != FUNCTION_EDEFAULT;
			case GarboardPackage.AIR_DUCT__AREA:
				return AREA_EDEFAULT == null ? area != null : !AREA_EDEFAULT.equals(area);
			case GarboardPackage.AIR_DUCT__END_FITTING_AREA:
				return END_FITTING_AREA_EDEFAULT == null ? endFittingArea != null : !END_FITTING_AREA_EDEFAULT.equals(endFittingArea);
			case GarboardPackage.AIR_DUCT__FLEXIBLE:
				return flexible != FLEXIBLE_EDEFAULT;
			case GarboardPackage.AIR_DUCT__MOUTH_HEIGHT:
				return MOUTH_HEIGHT_EDEFAULT == null ? mouthHeight != null : !MOUTH_HEIGHT_EDEFAULT.equals(mouthHeight);
			case GarboardPackage.AIR_DUCT__TERMINATES_OUTSIDE:
				return terminatesOutside != TERMINATES_OUTSIDE_EDEFAULT;
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
		result.append(" (name: ");
		result.append(name);
		result.append(", function: ");
		result.append(function);
		result.append(", area: ");
		result.append(area);
		result.append(", endFittingArea: ");
		result.append(endFittingArea);
		result.append(", flexible: ");
		result.append(flexible);
		result.append(", mouthHeight: ");
		result.append(mouthHeight);
		result.append(", terminatesOutside: ");
		result.append(terminatesOutside);
		result.append(')');
		return result.toString();
	}

} //AirDuctImpl
