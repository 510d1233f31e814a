/**
 */
package garboard.model;

import garboard.quantity.Angle;
import garboard.quantity.Area;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Resistance;
import garboard.quantity.Slope;
import garboard.quantity.Temperature;
import garboard.quantity.TemperatureDifference;
import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Maker Limits</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.MakerLimits#getDocument <em>Document</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getDocumentPage <em>Document Page</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumBackPressure <em>Maximum Back Pressure</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumLiftHeight <em>Maximum Lift Height</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumSiphonBreakHeight <em>Minimum Siphon Break Height</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumSiphonClearanceHeeled <em>Minimum Siphon Clearance Heeled</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getSiphonBreakNeededBelow <em>Siphon Break Needed Below</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumInjectionDrop <em>Minimum Injection Drop</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumExhaustFall <em>Minimum Exhaust Fall</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumExhaustBore <em>Minimum Exhaust Bore</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumExhaustLength <em>Maximum Exhaust Length</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumMufflerVolume <em>Minimum Muffler Volume</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumRawWaterFlow <em>Minimum Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumRawWaterSuctionHead <em>Maximum Raw Water Suction Head</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumRawWaterVacuum <em>Maximum Raw Water Vacuum</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumRawWaterInletPressure <em>Maximum Raw Water Inlet Pressure</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumRawWaterHoseBore <em>Minimum Raw Water Hose Bore</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumFuelLift <em>Maximum Fuel Lift</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumFuelVacuum <em>Maximum Fuel Vacuum</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumFuelLineBore <em>Minimum Fuel Line Bore</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getRequiredSeparatorFlow <em>Required Separator Flow</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getFilterFineness <em>Filter Fineness</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumBatteryCcA <em>Minimum Battery Cc A</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumBatteryCapacity <em>Minimum Battery Capacity</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getBatteryCrankingDefinition <em>Battery Cranking Definition</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumCrankingCircuitResistance <em>Maximum Cranking Circuit Resistance</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumCrankingVoltage <em>Minimum Cranking Voltage</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getFeedPressureLow <em>Feed Pressure Low</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getFeedPressureHigh <em>Feed Pressure High</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getRailPressureLow <em>Rail Pressure Low</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getRailPressureHigh <em>Rail Pressure High</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumCrankTime <em>Maximum Crank Time</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumTotalCrankTime <em>Maximum Total Crank Time</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumCompartmentTemperature <em>Maximum Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumCompartmentRise <em>Maximum Compartment Rise</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumDepression <em>Maximum Depression</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumHeel <em>Maximum Heel</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumTrim <em>Maximum Trim</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumCoolantTemperature <em>Maximum Coolant Temperature</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumOilPressure <em>Minimum Oil Pressure</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMaximumExhaustTemperature <em>Maximum Exhaust Temperature</em>}</li>
 *   <li>{@link garboard.model.MakerLimits#getMinimumVentilationArea <em>Minimum Ventilation Area</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getMakerLimits()
 * @generated
 */
public interface MakerLimits extends EObject {
	/**
	 * Returns the value of the '<em><b>Document</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Document</em>' attribute.
	 * @see #setDocument(String)
	 * @see garboard.model.GarboardPackage#getMakerLimits_Document()
	 * @generated
	 */
	String getDocument();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getDocument <em>Document</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Document</em>' attribute.
	 * @see #getDocument()
	 * @generated
	 */
	void setDocument(String value);

	/**
	 * Returns the value of the '<em><b>Document Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Document Page</em>' attribute.
	 * @see #setDocumentPage(String)
	 * @see garboard.model.GarboardPackage#getMakerLimits_DocumentPage()
	 * @generated
	 */
	String getDocumentPage();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getDocumentPage <em>Document Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Document Page</em>' attribute.
	 * @see #getDocumentPage()
	 * @generated
	 */
	void setDocumentPage(String value);

	/**
	 * Returns the value of the '<em><b>Maximum Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Back Pressure</em>' attribute.
	 * @see #setMaximumBackPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumBackPressure()
	 * @generated
	 */
	GaugePressure getMaximumBackPressure();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumBackPressure <em>Maximum Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Back Pressure</em>' attribute.
	 * @see #getMaximumBackPressure()
	 * @generated
	 */
	void setMaximumBackPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Maximum Lift Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Lift Height</em>' attribute.
	 * @see #setMaximumLiftHeight(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumLiftHeight()
	 * @generated
	 */
	Length getMaximumLiftHeight();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumLiftHeight <em>Maximum Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Lift Height</em>' attribute.
	 * @see #getMaximumLiftHeight()
	 * @generated
	 */
	void setMaximumLiftHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Siphon Break Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Siphon Break Height</em>' attribute.
	 * @see #setMinimumSiphonBreakHeight(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumSiphonBreakHeight()
	 * @generated
	 */
	Length getMinimumSiphonBreakHeight();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumSiphonBreakHeight <em>Minimum Siphon Break Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Siphon Break Height</em>' attribute.
	 * @see #getMinimumSiphonBreakHeight()
	 * @generated
	 */
	void setMinimumSiphonBreakHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Siphon Clearance Heeled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Siphon Clearance Heeled</em>' attribute.
	 * @see #setMinimumSiphonClearanceHeeled(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumSiphonClearanceHeeled()
	 * @generated
	 */
	Length getMinimumSiphonClearanceHeeled();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumSiphonClearanceHeeled <em>Minimum Siphon Clearance Heeled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Siphon Clearance Heeled</em>' attribute.
	 * @see #getMinimumSiphonClearanceHeeled()
	 * @generated
	 */
	void setMinimumSiphonClearanceHeeled(Length value);

	/**
	 * Returns the value of the '<em><b>Siphon Break Needed Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Siphon Break Needed Below</em>' attribute.
	 * @see #setSiphonBreakNeededBelow(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_SiphonBreakNeededBelow()
	 * @generated
	 */
	Length getSiphonBreakNeededBelow();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getSiphonBreakNeededBelow <em>Siphon Break Needed Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Siphon Break Needed Below</em>' attribute.
	 * @see #getSiphonBreakNeededBelow()
	 * @generated
	 */
	void setSiphonBreakNeededBelow(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Injection Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Injection Drop</em>' attribute.
	 * @see #setMinimumInjectionDrop(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumInjectionDrop()
	 * @generated
	 */
	Length getMinimumInjectionDrop();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumInjectionDrop <em>Minimum Injection Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Injection Drop</em>' attribute.
	 * @see #getMinimumInjectionDrop()
	 * @generated
	 */
	void setMinimumInjectionDrop(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Exhaust Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Exhaust Fall</em>' attribute.
	 * @see #setMinimumExhaustFall(Slope)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumExhaustFall()
	 * @generated
	 */
	Slope getMinimumExhaustFall();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumExhaustFall <em>Minimum Exhaust Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Exhaust Fall</em>' attribute.
	 * @see #getMinimumExhaustFall()
	 * @generated
	 */
	void setMinimumExhaustFall(Slope value);

	/**
	 * Returns the value of the '<em><b>Minimum Exhaust Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Exhaust Bore</em>' attribute.
	 * @see #setMinimumExhaustBore(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumExhaustBore()
	 * @generated
	 */
	Length getMinimumExhaustBore();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumExhaustBore <em>Minimum Exhaust Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Exhaust Bore</em>' attribute.
	 * @see #getMinimumExhaustBore()
	 * @generated
	 */
	void setMinimumExhaustBore(Length value);

	/**
	 * Returns the value of the '<em><b>Maximum Exhaust Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Exhaust Length</em>' attribute.
	 * @see #setMaximumExhaustLength(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumExhaustLength()
	 * @generated
	 */
	Length getMaximumExhaustLength();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumExhaustLength <em>Maximum Exhaust Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Exhaust Length</em>' attribute.
	 * @see #getMaximumExhaustLength()
	 * @generated
	 */
	void setMaximumExhaustLength(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Muffler Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Muffler Volume</em>' attribute.
	 * @see #setMinimumMufflerVolume(Volume)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumMufflerVolume()
	 * @generated
	 */
	Volume getMinimumMufflerVolume();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumMufflerVolume <em>Minimum Muffler Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Muffler Volume</em>' attribute.
	 * @see #getMinimumMufflerVolume()
	 * @generated
	 */
	void setMinimumMufflerVolume(Volume value);

	/**
	 * Returns the value of the '<em><b>Minimum Raw Water Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Raw Water Flow</em>' attribute.
	 * @see #setMinimumRawWaterFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumRawWaterFlow()
	 * @generated
	 */
	VolumeFlow getMinimumRawWaterFlow();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumRawWaterFlow <em>Minimum Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Raw Water Flow</em>' attribute.
	 * @see #getMinimumRawWaterFlow()
	 * @generated
	 */
	void setMinimumRawWaterFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Maximum Raw Water Suction Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Raw Water Suction Head</em>' attribute.
	 * @see #setMaximumRawWaterSuctionHead(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumRawWaterSuctionHead()
	 * @generated
	 */
	Length getMaximumRawWaterSuctionHead();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumRawWaterSuctionHead <em>Maximum Raw Water Suction Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Raw Water Suction Head</em>' attribute.
	 * @see #getMaximumRawWaterSuctionHead()
	 * @generated
	 */
	void setMaximumRawWaterSuctionHead(Length value);

	/**
	 * Returns the value of the '<em><b>Maximum Raw Water Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Raw Water Vacuum</em>' attribute.
	 * @see #setMaximumRawWaterVacuum(PressureDifference)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumRawWaterVacuum()
	 * @generated
	 */
	PressureDifference getMaximumRawWaterVacuum();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumRawWaterVacuum <em>Maximum Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Raw Water Vacuum</em>' attribute.
	 * @see #getMaximumRawWaterVacuum()
	 * @generated
	 */
	void setMaximumRawWaterVacuum(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Maximum Raw Water Inlet Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Raw Water Inlet Pressure</em>' attribute.
	 * @see #setMaximumRawWaterInletPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumRawWaterInletPressure()
	 * @generated
	 */
	GaugePressure getMaximumRawWaterInletPressure();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumRawWaterInletPressure <em>Maximum Raw Water Inlet Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Raw Water Inlet Pressure</em>' attribute.
	 * @see #getMaximumRawWaterInletPressure()
	 * @generated
	 */
	void setMaximumRawWaterInletPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Minimum Raw Water Hose Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Raw Water Hose Bore</em>' attribute.
	 * @see #setMinimumRawWaterHoseBore(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumRawWaterHoseBore()
	 * @generated
	 */
	Length getMinimumRawWaterHoseBore();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumRawWaterHoseBore <em>Minimum Raw Water Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Raw Water Hose Bore</em>' attribute.
	 * @see #getMinimumRawWaterHoseBore()
	 * @generated
	 */
	void setMinimumRawWaterHoseBore(Length value);

	/**
	 * Returns the value of the '<em><b>Maximum Fuel Lift</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Fuel Lift</em>' attribute.
	 * @see #setMaximumFuelLift(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumFuelLift()
	 * @generated
	 */
	Length getMaximumFuelLift();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumFuelLift <em>Maximum Fuel Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Fuel Lift</em>' attribute.
	 * @see #getMaximumFuelLift()
	 * @generated
	 */
	void setMaximumFuelLift(Length value);

	/**
	 * Returns the value of the '<em><b>Maximum Fuel Vacuum</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Fuel Vacuum</em>' attribute.
	 * @see #setMaximumFuelVacuum(PressureDifference)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumFuelVacuum()
	 * @generated
	 */
	PressureDifference getMaximumFuelVacuum();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumFuelVacuum <em>Maximum Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Fuel Vacuum</em>' attribute.
	 * @see #getMaximumFuelVacuum()
	 * @generated
	 */
	void setMaximumFuelVacuum(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Minimum Fuel Line Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Fuel Line Bore</em>' attribute.
	 * @see #setMinimumFuelLineBore(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumFuelLineBore()
	 * @generated
	 */
	Length getMinimumFuelLineBore();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumFuelLineBore <em>Minimum Fuel Line Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Fuel Line Bore</em>' attribute.
	 * @see #getMinimumFuelLineBore()
	 * @generated
	 */
	void setMinimumFuelLineBore(Length value);

	/**
	 * Returns the value of the '<em><b>Required Separator Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Required Separator Flow</em>' attribute.
	 * @see #setRequiredSeparatorFlow(VolumeFlow)
	 * @see garboard.model.GarboardPackage#getMakerLimits_RequiredSeparatorFlow()
	 * @generated
	 */
	VolumeFlow getRequiredSeparatorFlow();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getRequiredSeparatorFlow <em>Required Separator Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Required Separator Flow</em>' attribute.
	 * @see #getRequiredSeparatorFlow()
	 * @generated
	 */
	void setRequiredSeparatorFlow(VolumeFlow value);

	/**
	 * Returns the value of the '<em><b>Filter Fineness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Filter Fineness</em>' attribute.
	 * @see #setFilterFineness(Length)
	 * @see garboard.model.GarboardPackage#getMakerLimits_FilterFineness()
	 * @generated
	 */
	Length getFilterFineness();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getFilterFineness <em>Filter Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Filter Fineness</em>' attribute.
	 * @see #getFilterFineness()
	 * @generated
	 */
	void setFilterFineness(Length value);

	/**
	 * Returns the value of the '<em><b>Minimum Battery Cc A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Battery Cc A</em>' attribute.
	 * @see #setMinimumBatteryCcA(Current)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumBatteryCcA()
	 * @generated
	 */
	Current getMinimumBatteryCcA();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumBatteryCcA <em>Minimum Battery Cc A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Battery Cc A</em>' attribute.
	 * @see #getMinimumBatteryCcA()
	 * @generated
	 */
	void setMinimumBatteryCcA(Current value);

	/**
	 * Returns the value of the '<em><b>Minimum Battery Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Battery Capacity</em>' attribute.
	 * @see #setMinimumBatteryCapacity(Charge)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumBatteryCapacity()
	 * @generated
	 */
	Charge getMinimumBatteryCapacity();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumBatteryCapacity <em>Minimum Battery Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Battery Capacity</em>' attribute.
	 * @see #getMinimumBatteryCapacity()
	 * @generated
	 */
	void setMinimumBatteryCapacity(Charge value);

	/**
	 * Returns the value of the '<em><b>Battery Cranking Definition</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.CrankingRatingDefinition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Battery Cranking Definition</em>' attribute.
	 * @see garboard.model.CrankingRatingDefinition
	 * @see #setBatteryCrankingDefinition(CrankingRatingDefinition)
	 * @see garboard.model.GarboardPackage#getMakerLimits_BatteryCrankingDefinition()
	 * @generated
	 */
	CrankingRatingDefinition getBatteryCrankingDefinition();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getBatteryCrankingDefinition <em>Battery Cranking Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Battery Cranking Definition</em>' attribute.
	 * @see garboard.model.CrankingRatingDefinition
	 * @see #getBatteryCrankingDefinition()
	 * @generated
	 */
	void setBatteryCrankingDefinition(CrankingRatingDefinition value);

	/**
	 * Returns the value of the '<em><b>Maximum Cranking Circuit Resistance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Cranking Circuit Resistance</em>' attribute.
	 * @see #setMaximumCrankingCircuitResistance(Resistance)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumCrankingCircuitResistance()
	 * @generated
	 */
	Resistance getMaximumCrankingCircuitResistance();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumCrankingCircuitResistance <em>Maximum Cranking Circuit Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Cranking Circuit Resistance</em>' attribute.
	 * @see #getMaximumCrankingCircuitResistance()
	 * @generated
	 */
	void setMaximumCrankingCircuitResistance(Resistance value);

	/**
	 * Returns the value of the '<em><b>Minimum Cranking Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Cranking Voltage</em>' attribute.
	 * @see #setMinimumCrankingVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumCrankingVoltage()
	 * @generated
	 */
	Voltage getMinimumCrankingVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumCrankingVoltage <em>Minimum Cranking Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Cranking Voltage</em>' attribute.
	 * @see #getMinimumCrankingVoltage()
	 * @generated
	 */
	void setMinimumCrankingVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Feed Pressure Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Feed Pressure Low</em>' attribute.
	 * @see #setFeedPressureLow(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_FeedPressureLow()
	 * @generated
	 */
	GaugePressure getFeedPressureLow();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getFeedPressureLow <em>Feed Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Feed Pressure Low</em>' attribute.
	 * @see #getFeedPressureLow()
	 * @generated
	 */
	void setFeedPressureLow(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Feed Pressure High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Feed Pressure High</em>' attribute.
	 * @see #setFeedPressureHigh(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_FeedPressureHigh()
	 * @generated
	 */
	GaugePressure getFeedPressureHigh();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getFeedPressureHigh <em>Feed Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Feed Pressure High</em>' attribute.
	 * @see #getFeedPressureHigh()
	 * @generated
	 */
	void setFeedPressureHigh(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Rail Pressure Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rail Pressure Low</em>' attribute.
	 * @see #setRailPressureLow(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_RailPressureLow()
	 * @generated
	 */
	GaugePressure getRailPressureLow();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getRailPressureLow <em>Rail Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Pressure Low</em>' attribute.
	 * @see #getRailPressureLow()
	 * @generated
	 */
	void setRailPressureLow(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Rail Pressure High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rail Pressure High</em>' attribute.
	 * @see #setRailPressureHigh(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_RailPressureHigh()
	 * @generated
	 */
	GaugePressure getRailPressureHigh();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getRailPressureHigh <em>Rail Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Pressure High</em>' attribute.
	 * @see #getRailPressureHigh()
	 * @generated
	 */
	void setRailPressureHigh(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Maximum Crank Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Crank Time</em>' attribute.
	 * @see #setMaximumCrankTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumCrankTime()
	 * @generated
	 */
	TimeSpan getMaximumCrankTime();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumCrankTime <em>Maximum Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Crank Time</em>' attribute.
	 * @see #getMaximumCrankTime()
	 * @generated
	 */
	void setMaximumCrankTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Maximum Total Crank Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Total Crank Time</em>' attribute.
	 * @see #setMaximumTotalCrankTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumTotalCrankTime()
	 * @generated
	 */
	TimeSpan getMaximumTotalCrankTime();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumTotalCrankTime <em>Maximum Total Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Total Crank Time</em>' attribute.
	 * @see #getMaximumTotalCrankTime()
	 * @generated
	 */
	void setMaximumTotalCrankTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Maximum Compartment Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Compartment Temperature</em>' attribute.
	 * @see #setMaximumCompartmentTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumCompartmentTemperature()
	 * @generated
	 */
	Temperature getMaximumCompartmentTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumCompartmentTemperature <em>Maximum Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Compartment Temperature</em>' attribute.
	 * @see #getMaximumCompartmentTemperature()
	 * @generated
	 */
	void setMaximumCompartmentTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Maximum Compartment Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Compartment Rise</em>' attribute.
	 * @see #setMaximumCompartmentRise(TemperatureDifference)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumCompartmentRise()
	 * @generated
	 */
	TemperatureDifference getMaximumCompartmentRise();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumCompartmentRise <em>Maximum Compartment Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Compartment Rise</em>' attribute.
	 * @see #getMaximumCompartmentRise()
	 * @generated
	 */
	void setMaximumCompartmentRise(TemperatureDifference value);

	/**
	 * Returns the value of the '<em><b>Maximum Depression</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Depression</em>' attribute.
	 * @see #setMaximumDepression(PressureDifference)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumDepression()
	 * @generated
	 */
	PressureDifference getMaximumDepression();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumDepression <em>Maximum Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Depression</em>' attribute.
	 * @see #getMaximumDepression()
	 * @generated
	 */
	void setMaximumDepression(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Maximum Heel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Heel</em>' attribute.
	 * @see #setMaximumHeel(Angle)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumHeel()
	 * @generated
	 */
	Angle getMaximumHeel();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumHeel <em>Maximum Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Heel</em>' attribute.
	 * @see #getMaximumHeel()
	 * @generated
	 */
	void setMaximumHeel(Angle value);

	/**
	 * Returns the value of the '<em><b>Maximum Trim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Trim</em>' attribute.
	 * @see #setMaximumTrim(Angle)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumTrim()
	 * @generated
	 */
	Angle getMaximumTrim();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumTrim <em>Maximum Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Trim</em>' attribute.
	 * @see #getMaximumTrim()
	 * @generated
	 */
	void setMaximumTrim(Angle value);

	/**
	 * Returns the value of the '<em><b>Maximum Coolant Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Coolant Temperature</em>' attribute.
	 * @see #setMaximumCoolantTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumCoolantTemperature()
	 * @generated
	 */
	Temperature getMaximumCoolantTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumCoolantTemperature <em>Maximum Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Coolant Temperature</em>' attribute.
	 * @see #getMaximumCoolantTemperature()
	 * @generated
	 */
	void setMaximumCoolantTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Minimum Oil Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Oil Pressure</em>' attribute.
	 * @see #setMinimumOilPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumOilPressure()
	 * @generated
	 */
	GaugePressure getMinimumOilPressure();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumOilPressure <em>Minimum Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Oil Pressure</em>' attribute.
	 * @see #getMinimumOilPressure()
	 * @generated
	 */
	void setMinimumOilPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Maximum Exhaust Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maximum Exhaust Temperature</em>' attribute.
	 * @see #setMaximumExhaustTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MaximumExhaustTemperature()
	 * @generated
	 */
	Temperature getMaximumExhaustTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMaximumExhaustTemperature <em>Maximum Exhaust Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maximum Exhaust Temperature</em>' attribute.
	 * @see #getMaximumExhaustTemperature()
	 * @generated
	 */
	void setMaximumExhaustTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Minimum Ventilation Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Minimum Ventilation Area</em>' attribute.
	 * @see #setMinimumVentilationArea(Area)
	 * @see garboard.model.GarboardPackage#getMakerLimits_MinimumVentilationArea()
	 * @generated
	 */
	Area getMinimumVentilationArea();

	/**
	 * Sets the value of the '{@link garboard.model.MakerLimits#getMinimumVentilationArea <em>Minimum Ventilation Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Ventilation Area</em>' attribute.
	 * @see #getMinimumVentilationArea()
	 * @generated
	 */
	void setMinimumVentilationArea(Area value);

} // MakerLimits
