/**
 */
package garboard.model;

import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Electrical Load</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ElectricalLoad#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getPower <em>Power</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getEfficiency <em>Efficiency</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getPowerFactor <em>Power Factor</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getDemandFactor <em>Demand Factor</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getGroup <em>Group</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getExclusiveWith <em>Exclusive With</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getPhase <em>Phase</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getMotorHorsepower <em>Motor Horsepower</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getCodeLetter <em>Code Letter</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getLockedRotorCurrent <em>Locked Rotor Current</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getStarting <em>Starting</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getVoltage <em>Voltage</em>}</li>
 *   <li>{@link garboard.model.ElectricalLoad#getCondition <em>Condition</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getElectricalLoad()
 * @generated
 */
public interface ElectricalLoad extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.LoadKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.LoadKind
	 * @see #setKind(LoadKind)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Kind()
	 * @generated
	 */
	LoadKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.LoadKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(LoadKind value);

	/**
	 * Returns the value of the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power</em>' attribute.
	 * @see #setPower(Power)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Power()
	 * @generated
	 */
	Power getPower();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getPower <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power</em>' attribute.
	 * @see #getPower()
	 * @generated
	 */
	void setPower(Power value);

	/**
	 * Returns the value of the '<em><b>Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Efficiency</em>' attribute.
	 * @see #setEfficiency(Ratio)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Efficiency()
	 * @generated
	 */
	Ratio getEfficiency();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getEfficiency <em>Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Efficiency</em>' attribute.
	 * @see #getEfficiency()
	 * @generated
	 */
	void setEfficiency(Ratio value);

	/**
	 * Returns the value of the '<em><b>Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power Factor</em>' attribute.
	 * @see #setPowerFactor(Ratio)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_PowerFactor()
	 * @generated
	 */
	Ratio getPowerFactor();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getPowerFactor <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power Factor</em>' attribute.
	 * @see #getPowerFactor()
	 * @generated
	 */
	void setPowerFactor(Ratio value);

	/**
	 * Returns the value of the '<em><b>Demand Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Demand Factor</em>' attribute.
	 * @see #setDemandFactor(Ratio)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_DemandFactor()
	 * @generated
	 */
	Ratio getDemandFactor();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getDemandFactor <em>Demand Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Demand Factor</em>' attribute.
	 * @see #getDemandFactor()
	 * @generated
	 */
	void setDemandFactor(Ratio value);

	/**
	 * Returns the value of the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Group</em>' attribute.
	 * @see #setGroup(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Group()
	 * @generated
	 */
	String getGroup();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(String value);

	/**
	 * Returns the value of the '<em><b>Exclusive With</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exclusive With</em>' attribute.
	 * @see #setExclusiveWith(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_ExclusiveWith()
	 * @generated
	 */
	String getExclusiveWith();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getExclusiveWith <em>Exclusive With</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exclusive With</em>' attribute.
	 * @see #getExclusiveWith()
	 * @generated
	 */
	void setExclusiveWith(String value);

	/**
	 * Returns the value of the '<em><b>Phase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Phase</em>' attribute.
	 * @see #setPhase(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Phase()
	 * @generated
	 */
	String getPhase();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getPhase <em>Phase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Phase</em>' attribute.
	 * @see #getPhase()
	 * @generated
	 */
	void setPhase(String value);

	/**
	 * Returns the value of the '<em><b>Motor Horsepower</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Motor Horsepower</em>' attribute.
	 * @see #setMotorHorsepower(Power)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_MotorHorsepower()
	 * @generated
	 */
	Power getMotorHorsepower();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getMotorHorsepower <em>Motor Horsepower</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Motor Horsepower</em>' attribute.
	 * @see #getMotorHorsepower()
	 * @generated
	 */
	void setMotorHorsepower(Power value);

	/**
	 * Returns the value of the '<em><b>Code Letter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code Letter</em>' attribute.
	 * @see #setCodeLetter(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_CodeLetter()
	 * @generated
	 */
	String getCodeLetter();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getCodeLetter <em>Code Letter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code Letter</em>' attribute.
	 * @see #getCodeLetter()
	 * @generated
	 */
	void setCodeLetter(String value);

	/**
	 * Returns the value of the '<em><b>Locked Rotor Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Locked Rotor Current</em>' attribute.
	 * @see #setLockedRotorCurrent(Current)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_LockedRotorCurrent()
	 * @generated
	 */
	Current getLockedRotorCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getLockedRotorCurrent <em>Locked Rotor Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Locked Rotor Current</em>' attribute.
	 * @see #getLockedRotorCurrent()
	 * @generated
	 */
	void setLockedRotorCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Starting</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.MotorStarting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Starting</em>' attribute.
	 * @see garboard.model.MotorStarting
	 * @see #setStarting(MotorStarting)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Starting()
	 * @generated
	 */
	MotorStarting getStarting();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getStarting <em>Starting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Starting</em>' attribute.
	 * @see garboard.model.MotorStarting
	 * @see #getStarting()
	 * @generated
	 */
	void setStarting(MotorStarting value);

	/**
	 * Returns the value of the '<em><b>Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Voltage</em>' attribute.
	 * @see #setVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Voltage()
	 * @generated
	 */
	Voltage getVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getVoltage <em>Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Voltage</em>' attribute.
	 * @see #getVoltage()
	 * @generated
	 */
	void setVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Condition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Condition</em>' attribute.
	 * @see #setCondition(String)
	 * @see garboard.model.GarboardPackage#getElectricalLoad_Condition()
	 * @generated
	 */
	String getCondition();

	/**
	 * Sets the value of the '{@link garboard.model.ElectricalLoad#getCondition <em>Condition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Condition</em>' attribute.
	 * @see #getCondition()
	 * @generated
	 */
	void setCondition(String value);

} // ElectricalLoad
