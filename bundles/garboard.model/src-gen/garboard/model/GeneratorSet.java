/**
 */
package garboard.model;

import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Frequency;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Generator Set</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.GeneratorSet#getMaker <em>Maker</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getType <em>Type</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSerialNumber <em>Serial Number</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getEngineSerialNumber <em>Engine Serial Number</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getAlternatorSerialNumber <em>Alternator Serial Number</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSoldOn <em>Sold On</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getHourMeter <em>Hour Meter</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getFuel <em>Fuel</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getFuelSystem <em>Fuel System</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getAspiration <em>Aspiration</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getCooling <em>Cooling</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getDutyRating <em>Duty Rating</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedApparentPower <em>Rated Apparent Power</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedPowerFactor <em>Rated Power Factor</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedVoltage <em>Rated Voltage</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedFrequency <em>Rated Frequency</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getPhases <em>Phases</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getPoles <em>Poles</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getCrankingSpeed <em>Cranking Speed</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getShaftPower <em>Shaft Power</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getAlternatorEfficiency <em>Alternator Efficiency</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getFuelConsumptionFullLoad <em>Fuel Consumption Full Load</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSpecificFuelConsumption <em>Specific Fuel Consumption</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getAirFuelRatio <em>Air Fuel Ratio</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getExhaustGasTemperature <em>Exhaust Gas Temperature</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getExhaustMassFlow <em>Exhaust Mass Flow</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getHeatToCoolant <em>Heat To Coolant</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getHeatToCompartment <em>Heat To Compartment</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getCombustionAirFlow <em>Combustion Air Flow</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getRawWaterFlow <em>Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSystemVoltage <em>System Voltage</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getCrankingCurrent <em>Cranking Current</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getStarterVoltage <em>Starter Voltage</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getInSoundShield <em>In Sound Shield</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getOverloadDeclared <em>Overload Declared</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getEmissionLabelMarine <em>Emission Label Marine</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getPerformanceClass <em>Performance Class</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getDesignAmbient <em>Design Ambient</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSubtransientReactance <em>Subtransient Reactance</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getTransientReactance <em>Transient Reactance</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getSustainedShortCircuitMultiple <em>Sustained Short Circuit Multiple</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getAnnualHours <em>Annual Hours</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getPlateShowsDeratedPower <em>Plate Shows Derated Power</em>}</li>
 *   <li>{@link garboard.model.GeneratorSet#getMakerLimits <em>Maker Limits</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getGeneratorSet()
 * @generated
 */
public interface GeneratorSet extends EObject {
	/**
	 * Returns the value of the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maker</em>' attribute.
	 * @see #setMaker(String)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Maker()
	 * @generated
	 */
	String getMaker();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getMaker <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maker</em>' attribute.
	 * @see #getMaker()
	 * @generated
	 */
	void setMaker(String value);

	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see #setType(String)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Type()
	 * @generated
	 */
	String getType();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see #getType()
	 * @generated
	 */
	void setType(String value);

	/**
	 * Returns the value of the '<em><b>Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Serial Number</em>' attribute.
	 * @see #setSerialNumber(String)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SerialNumber()
	 * @generated
	 */
	String getSerialNumber();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSerialNumber <em>Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Serial Number</em>' attribute.
	 * @see #getSerialNumber()
	 * @generated
	 */
	void setSerialNumber(String value);

	/**
	 * Returns the value of the '<em><b>Engine Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Engine Serial Number</em>' attribute.
	 * @see #setEngineSerialNumber(String)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_EngineSerialNumber()
	 * @generated
	 */
	String getEngineSerialNumber();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getEngineSerialNumber <em>Engine Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Engine Serial Number</em>' attribute.
	 * @see #getEngineSerialNumber()
	 * @generated
	 */
	void setEngineSerialNumber(String value);

	/**
	 * Returns the value of the '<em><b>Alternator Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Alternator Serial Number</em>' attribute.
	 * @see #setAlternatorSerialNumber(String)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_AlternatorSerialNumber()
	 * @generated
	 */
	String getAlternatorSerialNumber();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getAlternatorSerialNumber <em>Alternator Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alternator Serial Number</em>' attribute.
	 * @see #getAlternatorSerialNumber()
	 * @generated
	 */
	void setAlternatorSerialNumber(String value);

	/**
	 * Returns the value of the '<em><b>Sold On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sold On</em>' attribute.
	 * @see #setSoldOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SoldOn()
	 * @generated
	 */
	LocalDate getSoldOn();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSoldOn <em>Sold On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sold On</em>' attribute.
	 * @see #getSoldOn()
	 * @generated
	 */
	void setSoldOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed On</em>' attribute.
	 * @see #setInstalledOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_InstalledOn()
	 * @generated
	 */
	LocalDate getInstalledOn();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getInstalledOn <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed On</em>' attribute.
	 * @see #getInstalledOn()
	 * @generated
	 */
	void setInstalledOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Hour Meter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hour Meter</em>' attribute.
	 * @see #setHourMeter(TimeSpan)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_HourMeter()
	 * @generated
	 */
	TimeSpan getHourMeter();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getHourMeter <em>Hour Meter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hour Meter</em>' attribute.
	 * @see #getHourMeter()
	 * @generated
	 */
	void setHourMeter(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Fuel</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FuelKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel</em>' attribute.
	 * @see garboard.model.FuelKind
	 * @see #setFuel(FuelKind)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Fuel()
	 * @generated
	 */
	FuelKind getFuel();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getFuel <em>Fuel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel</em>' attribute.
	 * @see garboard.model.FuelKind
	 * @see #getFuel()
	 * @generated
	 */
	void setFuel(FuelKind value);

	/**
	 * Returns the value of the '<em><b>Fuel System</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FuelSystem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel System</em>' attribute.
	 * @see garboard.model.FuelSystem
	 * @see #setFuelSystem(FuelSystem)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_FuelSystem()
	 * @generated
	 */
	FuelSystem getFuelSystem();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getFuelSystem <em>Fuel System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel System</em>' attribute.
	 * @see garboard.model.FuelSystem
	 * @see #getFuelSystem()
	 * @generated
	 */
	void setFuelSystem(FuelSystem value);

	/**
	 * Returns the value of the '<em><b>Aspiration</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Aspiration}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aspiration</em>' attribute.
	 * @see garboard.model.Aspiration
	 * @see #setAspiration(Aspiration)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Aspiration()
	 * @generated
	 */
	Aspiration getAspiration();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getAspiration <em>Aspiration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aspiration</em>' attribute.
	 * @see garboard.model.Aspiration
	 * @see #getAspiration()
	 * @generated
	 */
	void setAspiration(Aspiration value);

	/**
	 * Returns the value of the '<em><b>Cooling</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Cooling}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cooling</em>' attribute.
	 * @see garboard.model.Cooling
	 * @see #setCooling(Cooling)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Cooling()
	 * @generated
	 */
	Cooling getCooling();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getCooling <em>Cooling</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cooling</em>' attribute.
	 * @see garboard.model.Cooling
	 * @see #getCooling()
	 * @generated
	 */
	void setCooling(Cooling value);

	/**
	 * Returns the value of the '<em><b>Duty Rating</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.DutyRating}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Duty Rating</em>' attribute.
	 * @see garboard.model.DutyRating
	 * @see #setDutyRating(DutyRating)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_DutyRating()
	 * @generated
	 */
	DutyRating getDutyRating();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getDutyRating <em>Duty Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Duty Rating</em>' attribute.
	 * @see garboard.model.DutyRating
	 * @see #getDutyRating()
	 * @generated
	 */
	void setDutyRating(DutyRating value);

	/**
	 * Returns the value of the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Power</em>' attribute.
	 * @see #setRatedPower(Power)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedPower()
	 * @generated
	 */
	Power getRatedPower();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedPower <em>Rated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Power</em>' attribute.
	 * @see #getRatedPower()
	 * @generated
	 */
	void setRatedPower(Power value);

	/**
	 * Returns the value of the '<em><b>Rated Apparent Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Apparent Power</em>' attribute.
	 * @see #setRatedApparentPower(ApparentPower)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedApparentPower()
	 * @generated
	 */
	ApparentPower getRatedApparentPower();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedApparentPower <em>Rated Apparent Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Apparent Power</em>' attribute.
	 * @see #getRatedApparentPower()
	 * @generated
	 */
	void setRatedApparentPower(ApparentPower value);

	/**
	 * Returns the value of the '<em><b>Rated Power Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Power Factor</em>' attribute.
	 * @see #setRatedPowerFactor(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedPowerFactor()
	 * @generated
	 */
	Ratio getRatedPowerFactor();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedPowerFactor <em>Rated Power Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Power Factor</em>' attribute.
	 * @see #getRatedPowerFactor()
	 * @generated
	 */
	void setRatedPowerFactor(Ratio value);

	/**
	 * Returns the value of the '<em><b>Rated Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Voltage</em>' attribute.
	 * @see #setRatedVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedVoltage()
	 * @generated
	 */
	Voltage getRatedVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedVoltage <em>Rated Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Voltage</em>' attribute.
	 * @see #getRatedVoltage()
	 * @generated
	 */
	void setRatedVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Rated Frequency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Frequency</em>' attribute.
	 * @see #setRatedFrequency(Frequency)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedFrequency()
	 * @generated
	 */
	Frequency getRatedFrequency();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedFrequency <em>Rated Frequency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Frequency</em>' attribute.
	 * @see #getRatedFrequency()
	 * @generated
	 */
	void setRatedFrequency(Frequency value);

	/**
	 * Returns the value of the '<em><b>Phases</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.PhaseSystem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Phases</em>' attribute.
	 * @see garboard.model.PhaseSystem
	 * @see #setPhases(PhaseSystem)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Phases()
	 * @generated
	 */
	PhaseSystem getPhases();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getPhases <em>Phases</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Phases</em>' attribute.
	 * @see garboard.model.PhaseSystem
	 * @see #getPhases()
	 * @generated
	 */
	void setPhases(PhaseSystem value);

	/**
	 * Returns the value of the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Speed</em>' attribute.
	 * @see #setRatedSpeed(RotationalSpeed)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RatedSpeed()
	 * @generated
	 */
	RotationalSpeed getRatedSpeed();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRatedSpeed <em>Rated Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Speed</em>' attribute.
	 * @see #getRatedSpeed()
	 * @generated
	 */
	void setRatedSpeed(RotationalSpeed value);

	/**
	 * Returns the value of the '<em><b>Poles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Poles</em>' attribute.
	 * @see #setPoles(Integer)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_Poles()
	 * @generated
	 */
	Integer getPoles();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getPoles <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Poles</em>' attribute.
	 * @see #getPoles()
	 * @generated
	 */
	void setPoles(Integer value);

	/**
	 * Returns the value of the '<em><b>Cranking Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Speed</em>' attribute.
	 * @see #setCrankingSpeed(RotationalSpeed)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_CrankingSpeed()
	 * @generated
	 */
	RotationalSpeed getCrankingSpeed();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getCrankingSpeed <em>Cranking Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Speed</em>' attribute.
	 * @see #getCrankingSpeed()
	 * @generated
	 */
	void setCrankingSpeed(RotationalSpeed value);

	/**
	 * Returns the value of the '<em><b>Shaft Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shaft Power</em>' attribute.
	 * @see #setShaftPower(Power)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_ShaftPower()
	 * @generated
	 */
	Power getShaftPower();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getShaftPower <em>Shaft Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shaft Power</em>' attribute.
	 * @see #getShaftPower()
	 * @generated
	 */
	void setShaftPower(Power value);

	/**
	 * Returns the value of the '<em><b>Alternator Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Alternator Efficiency</em>' attribute.
	 * @see #setAlternatorEfficiency(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_AlternatorEfficiency()
	 * @generated
	 */
	Ratio getAlternatorEfficiency();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getAlternatorEfficiency <em>Alternator Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alternator Efficiency</em>' attribute.
	 * @see #getAlternatorEfficiency()
	 * @generated
	 */
	void setAlternatorEfficiency(Ratio value);

	/**
	 * Returns the value of the '<em><b>Fuel Consumption Full Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fuel Consumption Full Load</em>' attribute.
	 * @see #setFuelConsumptionFullLoad(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_FuelConsumptionFullLoad()
	 * @generated
	 */
	VolumeFlow getFuelConsumptionFullLoad();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getFuelConsumptionFullLoad <em>Fuel Consumption Full Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fuel Consumption Full Load</em>' attribute.
	 * @see #getFuelConsumptionFullLoad()
	 * @generated
	 */
	void setFuelConsumptionFullLoad(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Specific Fuel Consumption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specific Fuel Consumption</em>' attribute.
	 * @see #setSpecificFuelConsumption(SpecificConsumption)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SpecificFuelConsumption()
	 * @generated
	 */
	SpecificConsumption getSpecificFuelConsumption();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSpecificFuelConsumption <em>Specific Fuel Consumption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specific Fuel Consumption</em>' attribute.
	 * @see #getSpecificFuelConsumption()
	 * @generated
	 */
	void setSpecificFuelConsumption(SpecificConsumption value);

	/**
	 * Returns the value of the '<em><b>Air Fuel Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Air Fuel Ratio</em>' attribute.
	 * @see #setAirFuelRatio(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_AirFuelRatio()
	 * @generated
	 */
	Ratio getAirFuelRatio();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getAirFuelRatio <em>Air Fuel Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Air Fuel Ratio</em>' attribute.
	 * @see #getAirFuelRatio()
	 * @generated
	 */
	void setAirFuelRatio(Ratio value);

	/**
	 * Returns the value of the '<em><b>Exhaust Gas Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust Gas Temperature</em>' attribute.
	 * @see #setExhaustGasTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_ExhaustGasTemperature()
	 * @generated
	 */
	Temperature getExhaustGasTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getExhaustGasTemperature <em>Exhaust Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust Gas Temperature</em>' attribute.
	 * @see #getExhaustGasTemperature()
	 * @generated
	 */
	void setExhaustGasTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Exhaust Mass Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exhaust Mass Flow</em>' attribute.
	 * @see #setExhaustMassFlow(MassFlow)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_ExhaustMassFlow()
	 * @generated
	 */
	MassFlow getExhaustMassFlow();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getExhaustMassFlow <em>Exhaust Mass Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exhaust Mass Flow</em>' attribute.
	 * @see #getExhaustMassFlow()
	 * @generated
	 */
	void setExhaustMassFlow(MassFlow value);

	/**
	 * Returns the value of the '<em><b>Heat To Coolant</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heat To Coolant</em>' attribute.
	 * @see #setHeatToCoolant(Power)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_HeatToCoolant()
	 * @generated
	 */
	Power getHeatToCoolant();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getHeatToCoolant <em>Heat To Coolant</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heat To Coolant</em>' attribute.
	 * @see #getHeatToCoolant()
	 * @generated
	 */
	void setHeatToCoolant(Power value);

	/**
	 * Returns the value of the '<em><b>Heat To Compartment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heat To Compartment</em>' attribute.
	 * @see #setHeatToCompartment(Power)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_HeatToCompartment()
	 * @generated
	 */
	Power getHeatToCompartment();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getHeatToCompartment <em>Heat To Compartment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heat To Compartment</em>' attribute.
	 * @see #getHeatToCompartment()
	 * @generated
	 */
	void setHeatToCompartment(Power value);

	/**
	 * Returns the value of the '<em><b>Combustion Air Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Combustion Air Flow</em>' attribute.
	 * @see #setCombustionAirFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_CombustionAirFlow()
	 * @generated
	 */
	VolumeFlow getCombustionAirFlow();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getCombustionAirFlow <em>Combustion Air Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Combustion Air Flow</em>' attribute.
	 * @see #getCombustionAirFlow()
	 * @generated
	 */
	void setCombustionAirFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Raw Water Flow</em>' attribute.
	 * @see #setRawWaterFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_RawWaterFlow()
	 * @generated
	 */
	VolumeFlow getRawWaterFlow();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getRawWaterFlow <em>Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water Flow</em>' attribute.
	 * @see #getRawWaterFlow()
	 * @generated
	 */
	void setRawWaterFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>System Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>System Voltage</em>' attribute.
	 * @see #setSystemVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SystemVoltage()
	 * @generated
	 */
	Voltage getSystemVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSystemVoltage <em>System Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>System Voltage</em>' attribute.
	 * @see #getSystemVoltage()
	 * @generated
	 */
	void setSystemVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Cranking Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cranking Current</em>' attribute.
	 * @see #setCrankingCurrent(Current)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_CrankingCurrent()
	 * @generated
	 */
	Current getCrankingCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getCrankingCurrent <em>Cranking Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cranking Current</em>' attribute.
	 * @see #getCrankingCurrent()
	 * @generated
	 */
	void setCrankingCurrent(Current value);

	/**
	 * Returns the value of the '<em><b>Starter Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Starter Voltage</em>' attribute.
	 * @see #setStarterVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_StarterVoltage()
	 * @generated
	 */
	Voltage getStarterVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getStarterVoltage <em>Starter Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Starter Voltage</em>' attribute.
	 * @see #getStarterVoltage()
	 * @generated
	 */
	void setStarterVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>In Sound Shield</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Sound Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInSoundShield(Answer)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_InSoundShield()
	 * @generated
	 */
	Answer getInSoundShield();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getInSoundShield <em>In Sound Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Sound Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInSoundShield()
	 * @generated
	 */
	void setInSoundShield(Answer value);

	/**
	 * Returns the value of the '<em><b>Overload Declared</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overload Declared</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOverloadDeclared(Answer)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_OverloadDeclared()
	 * @generated
	 */
	Answer getOverloadDeclared();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getOverloadDeclared <em>Overload Declared</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overload Declared</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOverloadDeclared()
	 * @generated
	 */
	void setOverloadDeclared(Answer value);

	/**
	 * Returns the value of the '<em><b>Emission Label Marine</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Emission Label Marine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setEmissionLabelMarine(Answer)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_EmissionLabelMarine()
	 * @generated
	 */
	Answer getEmissionLabelMarine();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getEmissionLabelMarine <em>Emission Label Marine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Emission Label Marine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getEmissionLabelMarine()
	 * @generated
	 */
	void setEmissionLabelMarine(Answer value);

	/**
	 * Returns the value of the '<em><b>Performance Class</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.PerformanceClass}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Performance Class</em>' attribute.
	 * @see garboard.model.PerformanceClass
	 * @see #setPerformanceClass(PerformanceClass)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_PerformanceClass()
	 * @generated
	 */
	PerformanceClass getPerformanceClass();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getPerformanceClass <em>Performance Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Performance Class</em>' attribute.
	 * @see garboard.model.PerformanceClass
	 * @see #getPerformanceClass()
	 * @generated
	 */
	void setPerformanceClass(PerformanceClass value);

	/**
	 * Returns the value of the '<em><b>Design Ambient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Design Ambient</em>' attribute.
	 * @see #setDesignAmbient(Temperature)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_DesignAmbient()
	 * @generated
	 */
	Temperature getDesignAmbient();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getDesignAmbient <em>Design Ambient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Ambient</em>' attribute.
	 * @see #getDesignAmbient()
	 * @generated
	 */
	void setDesignAmbient(Temperature value);

	/**
	 * Returns the value of the '<em><b>Subtransient Reactance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Subtransient Reactance</em>' attribute.
	 * @see #setSubtransientReactance(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SubtransientReactance()
	 * @generated
	 */
	Ratio getSubtransientReactance();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSubtransientReactance <em>Subtransient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Subtransient Reactance</em>' attribute.
	 * @see #getSubtransientReactance()
	 * @generated
	 */
	void setSubtransientReactance(Ratio value);

	/**
	 * Returns the value of the '<em><b>Transient Reactance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Transient Reactance</em>' attribute.
	 * @see #setTransientReactance(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_TransientReactance()
	 * @generated
	 */
	Ratio getTransientReactance();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getTransientReactance <em>Transient Reactance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transient Reactance</em>' attribute.
	 * @see #getTransientReactance()
	 * @generated
	 */
	void setTransientReactance(Ratio value);

	/**
	 * Returns the value of the '<em><b>Sustained Short Circuit Multiple</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sustained Short Circuit Multiple</em>' attribute.
	 * @see #setSustainedShortCircuitMultiple(Ratio)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_SustainedShortCircuitMultiple()
	 * @generated
	 */
	Ratio getSustainedShortCircuitMultiple();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getSustainedShortCircuitMultiple <em>Sustained Short Circuit Multiple</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sustained Short Circuit Multiple</em>' attribute.
	 * @see #getSustainedShortCircuitMultiple()
	 * @generated
	 */
	void setSustainedShortCircuitMultiple(Ratio value);

	/**
	 * Returns the value of the '<em><b>Annual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Annual Hours</em>' attribute.
	 * @see #setAnnualHours(TimeSpan)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_AnnualHours()
	 * @generated
	 */
	TimeSpan getAnnualHours();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getAnnualHours <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Annual Hours</em>' attribute.
	 * @see #getAnnualHours()
	 * @generated
	 */
	void setAnnualHours(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Plate Shows Derated Power</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plate Shows Derated Power</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setPlateShowsDeratedPower(Answer)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_PlateShowsDeratedPower()
	 * @generated
	 */
	Answer getPlateShowsDeratedPower();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getPlateShowsDeratedPower <em>Plate Shows Derated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plate Shows Derated Power</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getPlateShowsDeratedPower()
	 * @generated
	 */
	void setPlateShowsDeratedPower(Answer value);

	/**
	 * Returns the value of the '<em><b>Maker Limits</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maker Limits</em>' containment reference.
	 * @see #setMakerLimits(MakerLimits)
	 * @see garboard.model.GarboardPackage#getGeneratorSet_MakerLimits()
	 * @generated
	 */
	MakerLimits getMakerLimits();

	/**
	 * Sets the value of the '{@link garboard.model.GeneratorSet#getMakerLimits <em>Maker Limits</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maker Limits</em>' containment reference.
	 * @see #getMakerLimits()
	 * @generated
	 */
	void setMakerLimits(MakerLimits value);

} // GeneratorSet
