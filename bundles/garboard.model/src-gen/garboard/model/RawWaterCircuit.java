/**
 */
package garboard.model;

import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Raw Water Circuit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.RawWaterCircuit#getPickUp <em>Pick Up</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getSeacock <em>Seacock</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getStrainer <em>Strainer</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getHoses <em>Hoses</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getPump <em>Pump</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getSiphonBreak <em>Siphon Break</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getInjection <em>Injection</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getSiphonBreakHoseBore <em>Siphon Break Hose Bore</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getOwnIntake <em>Own Intake</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getDischargeAheadOfIntake <em>Discharge Ahead Of Intake</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getMeasuredFlow <em>Measured Flow</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getMeasuredVacuumAtPump <em>Measured Vacuum At Pump</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getMeasuredInletTemperature <em>Measured Inlet Temperature</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getMeasuredOverboardTemperature <em>Measured Overboard Temperature</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getDesignSeaTemperature <em>Design Sea Temperature</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getSeacockTagAtStartPanel <em>Seacock Tag At Start Panel</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getShutWhenNotInUse <em>Shut When Not In Use</em>}</li>
 *   <li>{@link garboard.model.RawWaterCircuit#getWinteriseConnection <em>Winterise Connection</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getRawWaterCircuit()
 * @generated
 */
public interface RawWaterCircuit extends EObject {
	/**
	 * Returns the value of the '<em><b>Pick Up</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pick Up</em>' containment reference.
	 * @see #setPickUp(HullPickUp)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_PickUp()
	 * @generated
	 */
	HullPickUp getPickUp();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getPickUp <em>Pick Up</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pick Up</em>' containment reference.
	 * @see #getPickUp()
	 * @generated
	 */
	void setPickUp(HullPickUp value);

	/**
	 * Returns the value of the '<em><b>Seacock</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Seacock</em>' containment reference.
	 * @see #setSeacock(Seacock)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_Seacock()
	 * @generated
	 */
	Seacock getSeacock();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getSeacock <em>Seacock</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seacock</em>' containment reference.
	 * @see #getSeacock()
	 * @generated
	 */
	void setSeacock(Seacock value);

	/**
	 * Returns the value of the '<em><b>Strainer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strainer</em>' containment reference.
	 * @see #setStrainer(WaterStrainer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_Strainer()
	 * @generated
	 */
	WaterStrainer getStrainer();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getStrainer <em>Strainer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strainer</em>' containment reference.
	 * @see #getStrainer()
	 * @generated
	 */
	void setStrainer(WaterStrainer value);

	/**
	 * Returns the value of the '<em><b>Hoses</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.WaterHoseRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hoses</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_Hoses()
	 * @generated
	 */
	EList<WaterHoseRun> getHoses();

	/**
	 * Returns the value of the '<em><b>Pump</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pump</em>' containment reference.
	 * @see #setPump(WaterPump)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_Pump()
	 * @generated
	 */
	WaterPump getPump();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getPump <em>Pump</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump</em>' containment reference.
	 * @see #getPump()
	 * @generated
	 */
	void setPump(WaterPump value);

	/**
	 * Returns the value of the '<em><b>Siphon Break</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Siphon Break</em>' containment reference.
	 * @see #setSiphonBreak(SiphonBreak)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_SiphonBreak()
	 * @generated
	 */
	SiphonBreak getSiphonBreak();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getSiphonBreak <em>Siphon Break</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Siphon Break</em>' containment reference.
	 * @see #getSiphonBreak()
	 * @generated
	 */
	void setSiphonBreak(SiphonBreak value);

	/**
	 * Returns the value of the '<em><b>Injection</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Injection</em>' containment reference.
	 * @see #setInjection(Point)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_Injection()
	 * @generated
	 */
	Point getInjection();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getInjection <em>Injection</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Injection</em>' containment reference.
	 * @see #getInjection()
	 * @generated
	 */
	void setInjection(Point value);

	/**
	 * Returns the value of the '<em><b>Siphon Break Hose Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Siphon Break Hose Bore</em>' attribute.
	 * @see #setSiphonBreakHoseBore(Length)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_SiphonBreakHoseBore()
	 * @generated
	 */
	Length getSiphonBreakHoseBore();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getSiphonBreakHoseBore <em>Siphon Break Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Siphon Break Hose Bore</em>' attribute.
	 * @see #getSiphonBreakHoseBore()
	 * @generated
	 */
	void setSiphonBreakHoseBore(Length value);

	/**
	 * Returns the value of the '<em><b>Own Intake</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own Intake</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOwnIntake(Answer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_OwnIntake()
	 * @generated
	 */
	Answer getOwnIntake();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getOwnIntake <em>Own Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own Intake</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOwnIntake()
	 * @generated
	 */
	void setOwnIntake(Answer value);

	/**
	 * Returns the value of the '<em><b>Discharge Ahead Of Intake</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Discharge Ahead Of Intake</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDischargeAheadOfIntake(Answer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_DischargeAheadOfIntake()
	 * @generated
	 */
	Answer getDischargeAheadOfIntake();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getDischargeAheadOfIntake <em>Discharge Ahead Of Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Discharge Ahead Of Intake</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDischargeAheadOfIntake()
	 * @generated
	 */
	void setDischargeAheadOfIntake(Answer value);

	/**
	 * Returns the value of the '<em><b>Measured Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Flow</em>' attribute.
	 * @see #setMeasuredFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_MeasuredFlow()
	 * @generated
	 */
	VolumeFlow getMeasuredFlow();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getMeasuredFlow <em>Measured Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Flow</em>' attribute.
	 * @see #getMeasuredFlow()
	 * @generated
	 */
	void setMeasuredFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Measured Vacuum At Pump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Vacuum At Pump</em>' attribute.
	 * @see #setMeasuredVacuumAtPump(PressureDifference)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_MeasuredVacuumAtPump()
	 * @generated
	 */
	PressureDifference getMeasuredVacuumAtPump();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getMeasuredVacuumAtPump <em>Measured Vacuum At Pump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Vacuum At Pump</em>' attribute.
	 * @see #getMeasuredVacuumAtPump()
	 * @generated
	 */
	void setMeasuredVacuumAtPump(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Measured Inlet Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Inlet Temperature</em>' attribute.
	 * @see #setMeasuredInletTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_MeasuredInletTemperature()
	 * @generated
	 */
	Temperature getMeasuredInletTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getMeasuredInletTemperature <em>Measured Inlet Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Inlet Temperature</em>' attribute.
	 * @see #getMeasuredInletTemperature()
	 * @generated
	 */
	void setMeasuredInletTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Measured Overboard Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Overboard Temperature</em>' attribute.
	 * @see #setMeasuredOverboardTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_MeasuredOverboardTemperature()
	 * @generated
	 */
	Temperature getMeasuredOverboardTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getMeasuredOverboardTemperature <em>Measured Overboard Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Overboard Temperature</em>' attribute.
	 * @see #getMeasuredOverboardTemperature()
	 * @generated
	 */
	void setMeasuredOverboardTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Design Sea Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Sea Temperature</em>' attribute.
	 * @see #setDesignSeaTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_DesignSeaTemperature()
	 * @generated
	 */
	Temperature getDesignSeaTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getDesignSeaTemperature <em>Design Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Sea Temperature</em>' attribute.
	 * @see #getDesignSeaTemperature()
	 * @generated
	 */
	void setDesignSeaTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Seacock Tag At Start Panel</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Seacock Tag At Start Panel</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSeacockTagAtStartPanel(Answer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_SeacockTagAtStartPanel()
	 * @generated
	 */
	Answer getSeacockTagAtStartPanel();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getSeacockTagAtStartPanel <em>Seacock Tag At Start Panel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seacock Tag At Start Panel</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSeacockTagAtStartPanel()
	 * @generated
	 */
	void setSeacockTagAtStartPanel(Answer value);

	/**
	 * Returns the value of the '<em><b>Shut When Not In Use</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shut When Not In Use</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setShutWhenNotInUse(Answer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_ShutWhenNotInUse()
	 * @generated
	 */
	Answer getShutWhenNotInUse();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getShutWhenNotInUse <em>Shut When Not In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shut When Not In Use</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getShutWhenNotInUse()
	 * @generated
	 */
	void setShutWhenNotInUse(Answer value);

	/**
	 * Returns the value of the '<em><b>Winterise Connection</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Winterise Connection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWinteriseConnection(Answer)
	 * @see garboard.model.GarboardPackage#getRawWaterCircuit_WinteriseConnection()
	 * @generated
	 */
	Answer getWinteriseConnection();

	/**
	 * Sets the value of the '{@link garboard.model.RawWaterCircuit#getWinteriseConnection <em>Winterise Connection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Winterise Connection</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWinteriseConnection()
	 * @generated
	 */
	void setWinteriseConnection(Answer value);

} // RawWaterCircuit
