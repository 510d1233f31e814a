/**
 */
package garboard.model;

import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.GaugePressure;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;
import garboard.quantity.VolumeFlow;

import java.time.OffsetDateTime;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Reading#getAt <em>At</em>}</li>
 *   <li>{@link garboard.model.Reading#getVoltage1 <em>Voltage1</em>}</li>
 *   <li>{@link garboard.model.Reading#getVoltage2 <em>Voltage2</em>}</li>
 *   <li>{@link garboard.model.Reading#getVoltage3 <em>Voltage3</em>}</li>
 *   <li>{@link garboard.model.Reading#getCurrent1 <em>Current1</em>}</li>
 *   <li>{@link garboard.model.Reading#getCurrent2 <em>Current2</em>}</li>
 *   <li>{@link garboard.model.Reading#getCurrent3 <em>Current3</em>}</li>
 *   <li>{@link garboard.model.Reading#getFrequency <em>Frequency</em>}</li>
 *   <li>{@link garboard.model.Reading#getPower <em>Power</em>}</li>
 *   <li>{@link garboard.model.Reading#getPowerFactor <em>Power Factor</em>}</li>
 *   <li>{@link garboard.model.Reading#getOilPressure <em>Oil Pressure</em>}</li>
 *   <li>{@link garboard.model.Reading#getCoolantTemperature <em>Coolant Temperature</em>}</li>
 *   <li>{@link garboard.model.Reading#getRawWaterIn <em>Raw Water In</em>}</li>
 *   <li>{@link garboard.model.Reading#getRawWaterOut <em>Raw Water Out</em>}</li>
 *   <li>{@link garboard.model.Reading#getExhaustMixed <em>Exhaust Mixed</em>}</li>
 *   <li>{@link garboard.model.Reading#getExhaustDry <em>Exhaust Dry</em>}</li>
 *   <li>{@link garboard.model.Reading#getBackPressure <em>Back Pressure</em>}</li>
 *   <li>{@link garboard.model.Reading#getCompartmentTemperature <em>Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.Reading#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.Reading#getCompartmentDepression <em>Compartment Depression</em>}</li>
 *   <li>{@link garboard.model.Reading#getFuelVacuum <em>Fuel Vacuum</em>}</li>
 *   <li>{@link garboard.model.Reading#getRawWaterVacuum <em>Raw Water Vacuum</em>}</li>
 *   <li>{@link garboard.model.Reading#getRawWaterFlow <em>Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.Reading#getBatteryVoltage <em>Battery Voltage</em>}</li>
 *   <li>{@link garboard.model.Reading#getChargeCurrent <em>Charge Current</em>}</li>
 *   <li>{@link garboard.model.Reading#getCarbonMonoxide <em>Carbon Monoxide</em>}</li>
 *   <li>{@link garboard.model.Reading#getSmoke <em>Smoke</em>}</li>
 *   <li>{@link garboard.model.Reading#getNote <em>Note</em>}</li>
 *   <li>{@link garboard.model.Reading#getInstruments <em>Instruments</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getReading()
 * @generated
 */
public interface Reading extends Item {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(OffsetDateTime)
	 * @see garboard.model.GarboardPackage#getReading_At()
	 * @generated
	 */
	OffsetDateTime getAt();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(OffsetDateTime value);

	/**
	 * Returns the value of the '<em><b>Voltage1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Voltage1</em>' attribute.
	 * @see #setVoltage1(Voltage)
	 * @see garboard.model.GarboardPackage#getReading_Voltage1()
	 * @generated
	 */
	Voltage getVoltage1();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getVoltage1 <em>Voltage1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Voltage1</em>' attribute.
	 * @see #getVoltage1()
	 * @generated
	 */
	void setVoltage1(Voltage value);

	/**
	 * Returns the value of the '<em><b>Voltage2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Voltage2</em>' attribute.
	 * @see #setVoltage2(Voltage)
	 * @see garboard.model.GarboardPackage#getReading_Voltage2()
	 * @generated
	 */
	Voltage getVoltage2();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getVoltage2 <em>Voltage2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Voltage2</em>' attribute.
	 * @see #getVoltage2()
	 * @generated
	 */
	void setVoltage2(Voltage value);

	/**
	 * Returns the value of the '<em><b>Voltage3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Voltage3</em>' attribute.
	 * @see #setVoltage3(Voltage)
	 * @see garboard.model.GarboardPackage#getReading_Voltage3()
	 * @generated
	 */
	Voltage getVoltage3();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getVoltage3 <em>Voltage3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Voltage3</em>' attribute.
	 * @see #getVoltage3()
	 * @generated
	 */
	void setVoltage3(Voltage value);

	/**
	 * Returns the value of the '<em><b>Current1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Current1</em>' attribute.
	 * @see #setCurrent1(Current)
	 * @see garboard.model.GarboardPackage#getReading_Current1()
	 * @generated
	 */
	Current getCurrent1();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCurrent1 <em>Current1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current1</em>' attribute.
	 * @see #getCurrent1()
	 * @generated
	 */
	void setCurrent1(Current value);

	/**
	 * Returns the value of the '<em><b>Current2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Current2</em>' attribute.
	 * @see #setCurrent2(Current)
	 * @see garboard.model.GarboardPackage#getReading_Current2()
	 * @generated
	 */
	Current getCurrent2();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCurrent2 <em>Current2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current2</em>' attribute.
	 * @see #getCurrent2()
	 * @generated
	 */
	void setCurrent2(Current value);

	/**
	 * Returns the value of the '<em><b>Current3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Current3</em>' attribute.
	 * @see #setCurrent3(Current)
	 * @see garboard.model.GarboardPackage#getReading_Current3()
	 * @generated
	 */
	Current getCurrent3();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCurrent3 <em>Current3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current3</em>' attribute.
	 * @see #getCurrent3()
	 * @generated
	 */
	void setCurrent3(Current value);

	/**
	 * Returns the value of the '<em><b>Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frequency</em>' attribute.
	 * @see #setFrequency(Frequency)
	 * @see garboard.model.GarboardPackage#getReading_Frequency()
	 * @generated
	 */
	Frequency getFrequency();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getFrequency <em>Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frequency</em>' attribute.
	 * @see #getFrequency()
	 * @generated
	 */
	void setFrequency(Frequency value);

	/**
	 * Returns the value of the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power</em>' attribute.
	 * @see #setPower(Power)
	 * @see garboard.model.GarboardPackage#getReading_Power()
	 * @generated
	 */
	Power getPower();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getPower <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power</em>' attribute.
	 * @see #getPower()
	 * @generated
	 */
	void setPower(Power value);

	/**
	 * Returns the value of the '<em><b>Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power Factor</em>' attribute.
	 * @see #setPowerFactor(Ratio)
	 * @see garboard.model.GarboardPackage#getReading_PowerFactor()
	 * @generated
	 */
	Ratio getPowerFactor();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getPowerFactor <em>Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power Factor</em>' attribute.
	 * @see #getPowerFactor()
	 * @generated
	 */
	void setPowerFactor(Ratio value);

	/**
	 * Returns the value of the '<em><b>Oil Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Oil Pressure</em>' attribute.
	 * @see #setOilPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getReading_OilPressure()
	 * @generated
	 */
	GaugePressure getOilPressure();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getOilPressure <em>Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Oil Pressure</em>' attribute.
	 * @see #getOilPressure()
	 * @generated
	 */
	void setOilPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Coolant Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coolant Temperature</em>' attribute.
	 * @see #setCoolantTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_CoolantTemperature()
	 * @generated
	 */
	Temperature getCoolantTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCoolantTemperature <em>Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coolant Temperature</em>' attribute.
	 * @see #getCoolantTemperature()
	 * @generated
	 */
	void setCoolantTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Raw Water In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water In</em>' attribute.
	 * @see #setRawWaterIn(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_RawWaterIn()
	 * @generated
	 */
	Temperature getRawWaterIn();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getRawWaterIn <em>Raw Water In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water In</em>' attribute.
	 * @see #getRawWaterIn()
	 * @generated
	 */
	void setRawWaterIn(Temperature value);

	/**
	 * Returns the value of the '<em><b>Raw Water Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water Out</em>' attribute.
	 * @see #setRawWaterOut(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_RawWaterOut()
	 * @generated
	 */
	Temperature getRawWaterOut();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getRawWaterOut <em>Raw Water Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water Out</em>' attribute.
	 * @see #getRawWaterOut()
	 * @generated
	 */
	void setRawWaterOut(Temperature value);

	/**
	 * Returns the value of the '<em><b>Exhaust Mixed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust Mixed</em>' attribute.
	 * @see #setExhaustMixed(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_ExhaustMixed()
	 * @generated
	 */
	Temperature getExhaustMixed();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getExhaustMixed <em>Exhaust Mixed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust Mixed</em>' attribute.
	 * @see #getExhaustMixed()
	 * @generated
	 */
	void setExhaustMixed(Temperature value);

	/**
	 * Returns the value of the '<em><b>Exhaust Dry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust Dry</em>' attribute.
	 * @see #setExhaustDry(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_ExhaustDry()
	 * @generated
	 */
	Temperature getExhaustDry();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getExhaustDry <em>Exhaust Dry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust Dry</em>' attribute.
	 * @see #getExhaustDry()
	 * @generated
	 */
	void setExhaustDry(Temperature value);

	/**
	 * Returns the value of the '<em><b>Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Back Pressure</em>' attribute.
	 * @see #setBackPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getReading_BackPressure()
	 * @generated
	 */
	GaugePressure getBackPressure();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getBackPressure <em>Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Back Pressure</em>' attribute.
	 * @see #getBackPressure()
	 * @generated
	 */
	void setBackPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Compartment Temperature</em>' attribute.
	 * @see #setCompartmentTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_CompartmentTemperature()
	 * @generated
	 */
	Temperature getCompartmentTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCompartmentTemperature <em>Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Compartment Temperature</em>' attribute.
	 * @see #getCompartmentTemperature()
	 * @generated
	 */
	void setCompartmentTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outside Temperature</em>' attribute.
	 * @see #setOutsideTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getReading_OutsideTemperature()
	 * @generated
	 */
	Temperature getOutsideTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getOutsideTemperature <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outside Temperature</em>' attribute.
	 * @see #getOutsideTemperature()
	 * @generated
	 */
	void setOutsideTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Compartment Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Compartment Depression</em>' attribute.
	 * @see #setCompartmentDepression(PressureDifference)
	 * @see garboard.model.GarboardPackage#getReading_CompartmentDepression()
	 * @generated
	 */
	PressureDifference getCompartmentDepression();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCompartmentDepression <em>Compartment Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Compartment Depression</em>' attribute.
	 * @see #getCompartmentDepression()
	 * @generated
	 */
	void setCompartmentDepression(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Fuel Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel Vacuum</em>' attribute.
	 * @see #setFuelVacuum(PressureDifference)
	 * @see garboard.model.GarboardPackage#getReading_FuelVacuum()
	 * @generated
	 */
	PressureDifference getFuelVacuum();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getFuelVacuum <em>Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel Vacuum</em>' attribute.
	 * @see #getFuelVacuum()
	 * @generated
	 */
	void setFuelVacuum(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Raw Water Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water Vacuum</em>' attribute.
	 * @see #setRawWaterVacuum(PressureDifference)
	 * @see garboard.model.GarboardPackage#getReading_RawWaterVacuum()
	 * @generated
	 */
	PressureDifference getRawWaterVacuum();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getRawWaterVacuum <em>Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water Vacuum</em>' attribute.
	 * @see #getRawWaterVacuum()
	 * @generated
	 */
	void setRawWaterVacuum(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water Flow</em>' attribute.
	 * @see #setRawWaterFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getReading_RawWaterFlow()
	 * @generated
	 */
	VolumeFlow getRawWaterFlow();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getRawWaterFlow <em>Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water Flow</em>' attribute.
	 * @see #getRawWaterFlow()
	 * @generated
	 */
	void setRawWaterFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Battery Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Battery Voltage</em>' attribute.
	 * @see #setBatteryVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getReading_BatteryVoltage()
	 * @generated
	 */
	Voltage getBatteryVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getBatteryVoltage <em>Battery Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Battery Voltage</em>' attribute.
	 * @see #getBatteryVoltage()
	 * @generated
	 */
	void setBatteryVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Charge Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Charge Current</em>' attribute.
	 * @see #setChargeCurrent(Current)
	 * @see garboard.model.GarboardPackage#getReading_ChargeCurrent()
	 * @generated
	 */
	Current getChargeCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getChargeCurrent <em>Charge Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Charge Current</em>' attribute.
	 * @see #getChargeCurrent()
	 * @generated
	 */
	void setChargeCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide</em>' attribute.
	 * @see #setCarbonMonoxide(Ratio)
	 * @see garboard.model.GarboardPackage#getReading_CarbonMonoxide()
	 * @generated
	 */
	Ratio getCarbonMonoxide();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getCarbonMonoxide <em>Carbon Monoxide</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide</em>' attribute.
	 * @see #getCarbonMonoxide()
	 * @generated
	 */
	void setCarbonMonoxide(Ratio value);

	/**
	 * Returns the value of the '<em><b>Smoke</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.SmokeColour}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Smoke</em>' attribute.
	 * @see garboard.model.SmokeColour
	 * @see #setSmoke(SmokeColour)
	 * @see garboard.model.GarboardPackage#getReading_Smoke()
	 * @generated
	 */
	SmokeColour getSmoke();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getSmoke <em>Smoke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Smoke</em>' attribute.
	 * @see garboard.model.SmokeColour
	 * @see #getSmoke()
	 * @generated
	 */
	void setSmoke(SmokeColour value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see garboard.model.GarboardPackage#getReading_Note()
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Instruments</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instruments</em>' attribute.
	 * @see #setInstruments(String)
	 * @see garboard.model.GarboardPackage#getReading_Instruments()
	 * @generated
	 */
	String getInstruments();

	/**
	 * Sets the value of the '{@link garboard.model.Reading#getInstruments <em>Instruments</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instruments</em>' attribute.
	 * @see #getInstruments()
	 * @generated
	 */
	void setInstruments(String value);

} // Reading
