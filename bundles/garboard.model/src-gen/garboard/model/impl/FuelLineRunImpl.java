/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.model.GarboardPackage;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fuel Line Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getMarking <em>Marking</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getWorkingPressure <em>Working Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getBarbedEnds <em>Barbed Ends</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getInEngineSpace <em>In Engine Space</em>}</li>
 *   <li>{@link garboard.model.impl.FuelLineRunImpl#getInstalledOn <em>Installed On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FuelLineRunImpl extends ItemImpl implements FuelLineRun {
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
	protected static final FuelLineFunction FUNCTION_EDEFAULT = FuelLineFunction.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getFunction() <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFunction()
	 * @generated
	 * @ordered
	 */
	protected FuelLineFunction function = FUNCTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final FuelLineKind KIND_EDEFAULT = FuelLineKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected FuelLineKind kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Length length = LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarking() <em>Marking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarking()
	 * @generated
	 * @ordered
	 */
	protected static final String MARKING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMarking() <em>Marking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarking()
	 * @generated
	 * @ordered
	 */
	protected String marking = MARKING_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkingPressure() <em>Working Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure WORKING_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkingPressure() <em>Working Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkingPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure workingPressure = WORKING_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getClampsPerEnd() <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampsPerEnd()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CLAMPS_PER_END_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClampsPerEnd() <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampsPerEnd()
	 * @generated
	 * @ordered
	 */
	protected Integer clampsPerEnd = CLAMPS_PER_END_EDEFAULT;

	/**
	 * The default value of the '{@link #getBarbedEnds() <em>Barbed Ends</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarbedEnds()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BARBED_ENDS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBarbedEnds() <em>Barbed Ends</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarbedEnds()
	 * @generated
	 * @ordered
	 */
	protected Answer barbedEnds = BARBED_ENDS_EDEFAULT;

	/**
	 * The default value of the '{@link #getInEngineSpace() <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInEngineSpace()
	 * @generated
	 * @ordered
	 */
	protected static final Answer IN_ENGINE_SPACE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getInEngineSpace() <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInEngineSpace()
	 * @generated
	 * @ordered
	 */
	protected Answer inEngineSpace = IN_ENGINE_SPACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate INSTALLED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate installedOn = INSTALLED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FuelLineRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.FUEL_LINE_RUN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelLineFunction getFunction() {
		return function;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFunction(FuelLineFunction newFunction) {
		FuelLineFunction oldFunction = function;
		function = newFunction == null ? FUNCTION_EDEFAULT : newFunction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__FUNCTION, oldFunction, function));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelLineKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(FuelLineKind newKind) {
		FuelLineKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Length newLength) {
		Length oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMarking() {
		return marking;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarking(String newMarking) {
		String oldMarking = marking;
		marking = newMarking;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__MARKING, oldMarking, marking));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getWorkingPressure() {
		return workingPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkingPressure(GaugePressure newWorkingPressure) {
		GaugePressure oldWorkingPressure = workingPressure;
		workingPressure = newWorkingPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE, oldWorkingPressure, workingPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getClampsPerEnd() {
		return clampsPerEnd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClampsPerEnd(Integer newClampsPerEnd) {
		Integer oldClampsPerEnd = clampsPerEnd;
		clampsPerEnd = newClampsPerEnd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END, oldClampsPerEnd, clampsPerEnd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBarbedEnds() {
		return barbedEnds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBarbedEnds(Answer newBarbedEnds) {
		Answer oldBarbedEnds = barbedEnds;
		barbedEnds = newBarbedEnds == null ? BARBED_ENDS_EDEFAULT : newBarbedEnds;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS, oldBarbedEnds, barbedEnds));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getInEngineSpace() {
		return inEngineSpace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInEngineSpace(Answer newInEngineSpace) {
		Answer oldInEngineSpace = inEngineSpace;
		inEngineSpace = newInEngineSpace == null ? IN_ENGINE_SPACE_EDEFAULT : newInEngineSpace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE, oldInEngineSpace, inEngineSpace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getInstalledOn() {
		return installedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalledOn(LocalDate newInstalledOn) {
		LocalDate oldInstalledOn = installedOn;
		installedOn = newInstalledOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON, oldInstalledOn, installedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.FUEL_LINE_RUN__NAME:
				return getName();
			case GarboardPackage.FUEL_LINE_RUN__FUNCTION:
				return getFunction();
			case GarboardPackage.FUEL_LINE_RUN__KIND:
				return getKind();
			case GarboardPackage.FUEL_LINE_RUN__BORE:
				return getBore();
			case GarboardPackage.FUEL_LINE_RUN__LENGTH:
				return getLength();
			case GarboardPackage.FUEL_LINE_RUN__MARKING:
				return getMarking();
			case GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE:
				return getWorkingPressure();
			case GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END:
				return getClampsPerEnd();
			case GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS:
				return getBarbedEnds();
			case GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE:
				return getInEngineSpace();
			case GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON:
				return getInstalledOn();
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
			case GarboardPackage.FUEL_LINE_RUN__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__FUNCTION:
				setFunction((FuelLineFunction)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__KIND:
				setKind((FuelLineKind)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__LENGTH:
				setLength((Length)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__MARKING:
				setMarking((String)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE:
				setWorkingPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END:
				setClampsPerEnd((Integer)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS:
				setBarbedEnds((Answer)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE:
				setInEngineSpace((Answer)newValue);
				return;
			case GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON:
				setInstalledOn((LocalDate)newValue);
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
			case GarboardPackage.FUEL_LINE_RUN__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__FUNCTION:
				setFunction(FUNCTION_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__MARKING:
				setMarking(MARKING_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE:
				setWorkingPressure(WORKING_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END:
				setClampsPerEnd(CLAMPS_PER_END_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS:
				setBarbedEnds(BARBED_ENDS_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE:
				setInEngineSpace(IN_ENGINE_SPACE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON:
				setInstalledOn(INSTALLED_ON_EDEFAULT);
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
			case GarboardPackage.FUEL_LINE_RUN__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.FUEL_LINE_RUN__FUNCTION:
				return function != FUNCTION_EDEFAULT;
			case GarboardPackage.FUEL_LINE_RUN__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.FUEL_LINE_RUN__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.FUEL_LINE_RUN__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case GarboardPackage.FUEL_LINE_RUN__MARKING:
				return MARKING_EDEFAULT == null ? marking != null : !MARKING_EDEFAULT.equals(marking);
			case GarboardPackage.FUEL_LINE_RUN__WORKING_PRESSURE:
				return WORKING_PRESSURE_EDEFAULT == null ? workingPressure != null : !WORKING_PRESSURE_EDEFAULT.equals(workingPressure);
			case GarboardPackage.FUEL_LINE_RUN__CLAMPS_PER_END:
				return CLAMPS_PER_END_EDEFAULT == null ? clampsPerEnd != null : !CLAMPS_PER_END_EDEFAULT.equals(clampsPerEnd);
			case GarboardPackage.FUEL_LINE_RUN__BARBED_ENDS:
				return barbedEnds != BARBED_ENDS_EDEFAULT;
			case GarboardPackage.FUEL_LINE_RUN__IN_ENGINE_SPACE:
				return inEngineSpace != IN_ENGINE_SPACE_EDEFAULT;
			case GarboardPackage.FUEL_LINE_RUN__INSTALLED_ON:
				return INSTALLED_ON_EDEFAULT == null ? installedOn != null : !INSTALLED_ON_EDEFAULT.equals(installedOn);
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
		result.append(", kind: ");
		result.append(kind);
		result.append(", bore: ");
		result.append(bore);
		result.append(", length: ");
		result.append(length);
		result.append(", marking: ");
		result.append(marking);
		result.append(", workingPressure: ");
		result.append(workingPressure);
		result.append(", clampsPerEnd: ");
		result.append(clampsPerEnd);
		result.append(", barbedEnds: ");
		result.append(barbedEnds);
		result.append(", inEngineSpace: ");
		result.append(inEngineSpace);
		result.append(", installedOn: ");
		result.append(installedOn);
		result.append(')');
		return result.toString();
	}

} //FuelLineRunImpl
