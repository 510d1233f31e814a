/**
 */
package garboard.model.impl;

import garboard.model.CrankingRatingDefinition;
import garboard.model.GarboardPackage;
import garboard.model.MakerLimits;

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

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Maker Limits</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getDocument <em>Document</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getDocumentPage <em>Document Page</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumBackPressure <em>Maximum Back Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumLiftHeight <em>Maximum Lift Height</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumSiphonBreakHeight <em>Minimum Siphon Break Height</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumSiphonClearanceHeeled <em>Minimum Siphon Clearance Heeled</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getSiphonBreakNeededBelow <em>Siphon Break Needed Below</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumInjectionDrop <em>Minimum Injection Drop</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumExhaustFall <em>Minimum Exhaust Fall</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumExhaustBore <em>Minimum Exhaust Bore</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumExhaustLength <em>Maximum Exhaust Length</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumMufflerVolume <em>Minimum Muffler Volume</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumRawWaterFlow <em>Minimum Raw Water Flow</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumRawWaterSuctionHead <em>Maximum Raw Water Suction Head</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumRawWaterVacuum <em>Maximum Raw Water Vacuum</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumRawWaterInletPressure <em>Maximum Raw Water Inlet Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumRawWaterHoseBore <em>Minimum Raw Water Hose Bore</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumFuelLift <em>Maximum Fuel Lift</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumFuelVacuum <em>Maximum Fuel Vacuum</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumFuelLineBore <em>Minimum Fuel Line Bore</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getRequiredSeparatorFlow <em>Required Separator Flow</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getFilterFineness <em>Filter Fineness</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumBatteryCcA <em>Minimum Battery Cc A</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumBatteryCapacity <em>Minimum Battery Capacity</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getBatteryCrankingDefinition <em>Battery Cranking Definition</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumCrankingCircuitResistance <em>Maximum Cranking Circuit Resistance</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumCrankingVoltage <em>Minimum Cranking Voltage</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getFeedPressureLow <em>Feed Pressure Low</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getFeedPressureHigh <em>Feed Pressure High</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getRailPressureLow <em>Rail Pressure Low</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getRailPressureHigh <em>Rail Pressure High</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumCrankTime <em>Maximum Crank Time</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumTotalCrankTime <em>Maximum Total Crank Time</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumCompartmentTemperature <em>Maximum Compartment Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumCompartmentRise <em>Maximum Compartment Rise</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumDepression <em>Maximum Depression</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumHeel <em>Maximum Heel</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumTrim <em>Maximum Trim</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumCoolantTemperature <em>Maximum Coolant Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumOilPressure <em>Minimum Oil Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMaximumExhaustTemperature <em>Maximum Exhaust Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.MakerLimitsImpl#getMinimumVentilationArea <em>Minimum Ventilation Area</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MakerLimitsImpl extends MinimalEObjectImpl.Container implements MakerLimits {
	/**
	 * The default value of the '{@link #getDocument() <em>Document</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocument()
	 * @generated
	 * @ordered
	 */
	protected static final String DOCUMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDocument() <em>Document</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocument()
	 * @generated
	 * @ordered
	 */
	protected String document = DOCUMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDocumentPage() <em>Document Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocumentPage()
	 * @generated
	 * @ordered
	 */
	protected static final String DOCUMENT_PAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDocumentPage() <em>Document Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDocumentPage()
	 * @generated
	 * @ordered
	 */
	protected String documentPage = DOCUMENT_PAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumBackPressure() <em>Maximum Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumBackPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure MAXIMUM_BACK_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumBackPressure() <em>Maximum Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumBackPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure maximumBackPressure = MAXIMUM_BACK_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumLiftHeight() <em>Maximum Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumLiftHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length MAXIMUM_LIFT_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumLiftHeight() <em>Maximum Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumLiftHeight()
	 * @generated
	 * @ordered
	 */
	protected Length maximumLiftHeight = MAXIMUM_LIFT_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumSiphonBreakHeight() <em>Minimum Siphon Break Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumSiphonBreakHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_SIPHON_BREAK_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumSiphonBreakHeight() <em>Minimum Siphon Break Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumSiphonBreakHeight()
	 * @generated
	 * @ordered
	 */
	protected Length minimumSiphonBreakHeight = MINIMUM_SIPHON_BREAK_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumSiphonClearanceHeeled() <em>Minimum Siphon Clearance Heeled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumSiphonClearanceHeeled()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_SIPHON_CLEARANCE_HEELED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumSiphonClearanceHeeled() <em>Minimum Siphon Clearance Heeled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumSiphonClearanceHeeled()
	 * @generated
	 * @ordered
	 */
	protected Length minimumSiphonClearanceHeeled = MINIMUM_SIPHON_CLEARANCE_HEELED_EDEFAULT;

	/**
	 * The default value of the '{@link #getSiphonBreakNeededBelow() <em>Siphon Break Needed Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiphonBreakNeededBelow()
	 * @generated
	 * @ordered
	 */
	protected static final Length SIPHON_BREAK_NEEDED_BELOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiphonBreakNeededBelow() <em>Siphon Break Needed Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiphonBreakNeededBelow()
	 * @generated
	 * @ordered
	 */
	protected Length siphonBreakNeededBelow = SIPHON_BREAK_NEEDED_BELOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumInjectionDrop() <em>Minimum Injection Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumInjectionDrop()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_INJECTION_DROP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumInjectionDrop() <em>Minimum Injection Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumInjectionDrop()
	 * @generated
	 * @ordered
	 */
	protected Length minimumInjectionDrop = MINIMUM_INJECTION_DROP_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumExhaustFall() <em>Minimum Exhaust Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumExhaustFall()
	 * @generated
	 * @ordered
	 */
	protected static final Slope MINIMUM_EXHAUST_FALL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumExhaustFall() <em>Minimum Exhaust Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumExhaustFall()
	 * @generated
	 * @ordered
	 */
	protected Slope minimumExhaustFall = MINIMUM_EXHAUST_FALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumExhaustBore() <em>Minimum Exhaust Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumExhaustBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_EXHAUST_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumExhaustBore() <em>Minimum Exhaust Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumExhaustBore()
	 * @generated
	 * @ordered
	 */
	protected Length minimumExhaustBore = MINIMUM_EXHAUST_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumExhaustLength() <em>Maximum Exhaust Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumExhaustLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length MAXIMUM_EXHAUST_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumExhaustLength() <em>Maximum Exhaust Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumExhaustLength()
	 * @generated
	 * @ordered
	 */
	protected Length maximumExhaustLength = MAXIMUM_EXHAUST_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumMufflerVolume() <em>Minimum Muffler Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumMufflerVolume()
	 * @generated
	 * @ordered
	 */
	protected static final Volume MINIMUM_MUFFLER_VOLUME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumMufflerVolume() <em>Minimum Muffler Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumMufflerVolume()
	 * @generated
	 * @ordered
	 */
	protected Volume minimumMufflerVolume = MINIMUM_MUFFLER_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumRawWaterFlow() <em>Minimum Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumRawWaterFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow MINIMUM_RAW_WATER_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumRawWaterFlow() <em>Minimum Raw Water Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumRawWaterFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow minimumRawWaterFlow = MINIMUM_RAW_WATER_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumRawWaterSuctionHead() <em>Maximum Raw Water Suction Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterSuctionHead()
	 * @generated
	 * @ordered
	 */
	protected static final Length MAXIMUM_RAW_WATER_SUCTION_HEAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumRawWaterSuctionHead() <em>Maximum Raw Water Suction Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterSuctionHead()
	 * @generated
	 * @ordered
	 */
	protected Length maximumRawWaterSuctionHead = MAXIMUM_RAW_WATER_SUCTION_HEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumRawWaterVacuum() <em>Maximum Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterVacuum()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference MAXIMUM_RAW_WATER_VACUUM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumRawWaterVacuum() <em>Maximum Raw Water Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterVacuum()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference maximumRawWaterVacuum = MAXIMUM_RAW_WATER_VACUUM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumRawWaterInletPressure() <em>Maximum Raw Water Inlet Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterInletPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure MAXIMUM_RAW_WATER_INLET_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumRawWaterInletPressure() <em>Maximum Raw Water Inlet Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumRawWaterInletPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure maximumRawWaterInletPressure = MAXIMUM_RAW_WATER_INLET_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumRawWaterHoseBore() <em>Minimum Raw Water Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumRawWaterHoseBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_RAW_WATER_HOSE_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumRawWaterHoseBore() <em>Minimum Raw Water Hose Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumRawWaterHoseBore()
	 * @generated
	 * @ordered
	 */
	protected Length minimumRawWaterHoseBore = MINIMUM_RAW_WATER_HOSE_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumFuelLift() <em>Maximum Fuel Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumFuelLift()
	 * @generated
	 * @ordered
	 */
	protected static final Length MAXIMUM_FUEL_LIFT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumFuelLift() <em>Maximum Fuel Lift</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumFuelLift()
	 * @generated
	 * @ordered
	 */
	protected Length maximumFuelLift = MAXIMUM_FUEL_LIFT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumFuelVacuum() <em>Maximum Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumFuelVacuum()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference MAXIMUM_FUEL_VACUUM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumFuelVacuum() <em>Maximum Fuel Vacuum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumFuelVacuum()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference maximumFuelVacuum = MAXIMUM_FUEL_VACUUM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumFuelLineBore() <em>Minimum Fuel Line Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumFuelLineBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length MINIMUM_FUEL_LINE_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumFuelLineBore() <em>Minimum Fuel Line Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumFuelLineBore()
	 * @generated
	 * @ordered
	 */
	protected Length minimumFuelLineBore = MINIMUM_FUEL_LINE_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRequiredSeparatorFlow() <em>Required Separator Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequiredSeparatorFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow REQUIRED_SEPARATOR_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRequiredSeparatorFlow() <em>Required Separator Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequiredSeparatorFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow requiredSeparatorFlow = REQUIRED_SEPARATOR_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFilterFineness() <em>Filter Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFilterFineness()
	 * @generated
	 * @ordered
	 */
	protected static final Length FILTER_FINENESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFilterFineness() <em>Filter Fineness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFilterFineness()
	 * @generated
	 * @ordered
	 */
	protected Length filterFineness = FILTER_FINENESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumBatteryCcA() <em>Minimum Battery Cc A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumBatteryCcA()
	 * @generated
	 * @ordered
	 */
	protected static final Current MINIMUM_BATTERY_CC_A_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumBatteryCcA() <em>Minimum Battery Cc A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumBatteryCcA()
	 * @generated
	 * @ordered
	 */
	protected Current minimumBatteryCcA = MINIMUM_BATTERY_CC_A_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumBatteryCapacity() <em>Minimum Battery Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumBatteryCapacity()
	 * @generated
	 * @ordered
	 */
	protected static final Charge MINIMUM_BATTERY_CAPACITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumBatteryCapacity() <em>Minimum Battery Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumBatteryCapacity()
	 * @generated
	 * @ordered
	 */
	protected Charge minimumBatteryCapacity = MINIMUM_BATTERY_CAPACITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBatteryCrankingDefinition() <em>Battery Cranking Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryCrankingDefinition()
	 * @generated
	 * @ordered
	 */
	protected static final CrankingRatingDefinition BATTERY_CRANKING_DEFINITION_EDEFAULT = CrankingRatingDefinition.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getBatteryCrankingDefinition() <em>Battery Cranking Definition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBatteryCrankingDefinition()
	 * @generated
	 * @ordered
	 */
	protected CrankingRatingDefinition batteryCrankingDefinition = BATTERY_CRANKING_DEFINITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumCrankingCircuitResistance() <em>Maximum Cranking Circuit Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCrankingCircuitResistance()
	 * @generated
	 * @ordered
	 */
	protected static final Resistance MAXIMUM_CRANKING_CIRCUIT_RESISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumCrankingCircuitResistance() <em>Maximum Cranking Circuit Resistance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCrankingCircuitResistance()
	 * @generated
	 * @ordered
	 */
	protected Resistance maximumCrankingCircuitResistance = MAXIMUM_CRANKING_CIRCUIT_RESISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumCrankingVoltage() <em>Minimum Cranking Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumCrankingVoltage()
	 * @generated
	 * @ordered
	 */
	protected static final Voltage MINIMUM_CRANKING_VOLTAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumCrankingVoltage() <em>Minimum Cranking Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumCrankingVoltage()
	 * @generated
	 * @ordered
	 */
	protected Voltage minimumCrankingVoltage = MINIMUM_CRANKING_VOLTAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFeedPressureLow() <em>Feed Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressureLow()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure FEED_PRESSURE_LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeedPressureLow() <em>Feed Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressureLow()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure feedPressureLow = FEED_PRESSURE_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getFeedPressureHigh() <em>Feed Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressureHigh()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure FEED_PRESSURE_HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFeedPressureHigh() <em>Feed Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFeedPressureHigh()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure feedPressureHigh = FEED_PRESSURE_HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailPressureLow() <em>Rail Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressureLow()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure RAIL_PRESSURE_LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailPressureLow() <em>Rail Pressure Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressureLow()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure railPressureLow = RAIL_PRESSURE_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getRailPressureHigh() <em>Rail Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressureHigh()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure RAIL_PRESSURE_HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRailPressureHigh() <em>Rail Pressure High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRailPressureHigh()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure railPressureHigh = RAIL_PRESSURE_HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumCrankTime() <em>Maximum Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCrankTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan MAXIMUM_CRANK_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumCrankTime() <em>Maximum Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCrankTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan maximumCrankTime = MAXIMUM_CRANK_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumTotalCrankTime() <em>Maximum Total Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumTotalCrankTime()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan MAXIMUM_TOTAL_CRANK_TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumTotalCrankTime() <em>Maximum Total Crank Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumTotalCrankTime()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan maximumTotalCrankTime = MAXIMUM_TOTAL_CRANK_TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumCompartmentTemperature() <em>Maximum Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature MAXIMUM_COMPARTMENT_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumCompartmentTemperature() <em>Maximum Compartment Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCompartmentTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature maximumCompartmentTemperature = MAXIMUM_COMPARTMENT_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumCompartmentRise() <em>Maximum Compartment Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCompartmentRise()
	 * @generated
	 * @ordered
	 */
	protected static final TemperatureDifference MAXIMUM_COMPARTMENT_RISE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumCompartmentRise() <em>Maximum Compartment Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCompartmentRise()
	 * @generated
	 * @ordered
	 */
	protected TemperatureDifference maximumCompartmentRise = MAXIMUM_COMPARTMENT_RISE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumDepression() <em>Maximum Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumDepression()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference MAXIMUM_DEPRESSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumDepression() <em>Maximum Depression</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumDepression()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference maximumDepression = MAXIMUM_DEPRESSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumHeel() <em>Maximum Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumHeel()
	 * @generated
	 * @ordered
	 */
	protected static final Angle MAXIMUM_HEEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumHeel() <em>Maximum Heel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumHeel()
	 * @generated
	 * @ordered
	 */
	protected Angle maximumHeel = MAXIMUM_HEEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumTrim() <em>Maximum Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumTrim()
	 * @generated
	 * @ordered
	 */
	protected static final Angle MAXIMUM_TRIM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumTrim() <em>Maximum Trim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumTrim()
	 * @generated
	 * @ordered
	 */
	protected Angle maximumTrim = MAXIMUM_TRIM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumCoolantTemperature() <em>Maximum Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCoolantTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature MAXIMUM_COOLANT_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumCoolantTemperature() <em>Maximum Coolant Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumCoolantTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature maximumCoolantTemperature = MAXIMUM_COOLANT_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumOilPressure() <em>Minimum Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumOilPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure MINIMUM_OIL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumOilPressure() <em>Minimum Oil Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumOilPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure minimumOilPressure = MINIMUM_OIL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumExhaustTemperature() <em>Maximum Exhaust Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumExhaustTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature MAXIMUM_EXHAUST_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumExhaustTemperature() <em>Maximum Exhaust Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumExhaustTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature maximumExhaustTemperature = MAXIMUM_EXHAUST_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMinimumVentilationArea() <em>Minimum Ventilation Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumVentilationArea()
	 * @generated
	 * @ordered
	 */
	protected static final Area MINIMUM_VENTILATION_AREA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinimumVentilationArea() <em>Minimum Ventilation Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinimumVentilationArea()
	 * @generated
	 * @ordered
	 */
	protected Area minimumVentilationArea = MINIMUM_VENTILATION_AREA_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MakerLimitsImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.MAKER_LIMITS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDocument() {
		return document;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDocument(String newDocument) {
		String oldDocument = document;
		document = newDocument;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__DOCUMENT, oldDocument, document));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDocumentPage() {
		return documentPage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDocumentPage(String newDocumentPage) {
		String oldDocumentPage = documentPage;
		documentPage = newDocumentPage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE, oldDocumentPage, documentPage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getMaximumBackPressure() {
		return maximumBackPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumBackPressure(GaugePressure newMaximumBackPressure) {
		GaugePressure oldMaximumBackPressure = maximumBackPressure;
		maximumBackPressure = newMaximumBackPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE, oldMaximumBackPressure, maximumBackPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMaximumLiftHeight() {
		return maximumLiftHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumLiftHeight(Length newMaximumLiftHeight) {
		Length oldMaximumLiftHeight = maximumLiftHeight;
		maximumLiftHeight = newMaximumLiftHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT, oldMaximumLiftHeight, maximumLiftHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumSiphonBreakHeight() {
		return minimumSiphonBreakHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumSiphonBreakHeight(Length newMinimumSiphonBreakHeight) {
		Length oldMinimumSiphonBreakHeight = minimumSiphonBreakHeight;
		minimumSiphonBreakHeight = newMinimumSiphonBreakHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT, oldMinimumSiphonBreakHeight, minimumSiphonBreakHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumSiphonClearanceHeeled() {
		return minimumSiphonClearanceHeeled;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumSiphonClearanceHeeled(Length newMinimumSiphonClearanceHeeled) {
		Length oldMinimumSiphonClearanceHeeled = minimumSiphonClearanceHeeled;
		minimumSiphonClearanceHeeled = newMinimumSiphonClearanceHeeled;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED, oldMinimumSiphonClearanceHeeled, minimumSiphonClearanceHeeled));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSiphonBreakNeededBelow() {
		return siphonBreakNeededBelow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiphonBreakNeededBelow(Length newSiphonBreakNeededBelow) {
		Length oldSiphonBreakNeededBelow = siphonBreakNeededBelow;
		siphonBreakNeededBelow = newSiphonBreakNeededBelow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW, oldSiphonBreakNeededBelow, siphonBreakNeededBelow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumInjectionDrop() {
		return minimumInjectionDrop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumInjectionDrop(Length newMinimumInjectionDrop) {
		Length oldMinimumInjectionDrop = minimumInjectionDrop;
		minimumInjectionDrop = newMinimumInjectionDrop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP, oldMinimumInjectionDrop, minimumInjectionDrop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Slope getMinimumExhaustFall() {
		return minimumExhaustFall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumExhaustFall(Slope newMinimumExhaustFall) {
		Slope oldMinimumExhaustFall = minimumExhaustFall;
		minimumExhaustFall = newMinimumExhaustFall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL, oldMinimumExhaustFall, minimumExhaustFall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumExhaustBore() {
		return minimumExhaustBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumExhaustBore(Length newMinimumExhaustBore) {
		Length oldMinimumExhaustBore = minimumExhaustBore;
		minimumExhaustBore = newMinimumExhaustBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE, oldMinimumExhaustBore, minimumExhaustBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMaximumExhaustLength() {
		return maximumExhaustLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumExhaustLength(Length newMaximumExhaustLength) {
		Length oldMaximumExhaustLength = maximumExhaustLength;
		maximumExhaustLength = newMaximumExhaustLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH, oldMaximumExhaustLength, maximumExhaustLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getMinimumMufflerVolume() {
		return minimumMufflerVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumMufflerVolume(Volume newMinimumMufflerVolume) {
		Volume oldMinimumMufflerVolume = minimumMufflerVolume;
		minimumMufflerVolume = newMinimumMufflerVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME, oldMinimumMufflerVolume, minimumMufflerVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getMinimumRawWaterFlow() {
		return minimumRawWaterFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumRawWaterFlow(VolumeFlow newMinimumRawWaterFlow) {
		VolumeFlow oldMinimumRawWaterFlow = minimumRawWaterFlow;
		minimumRawWaterFlow = newMinimumRawWaterFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW, oldMinimumRawWaterFlow, minimumRawWaterFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMaximumRawWaterSuctionHead() {
		return maximumRawWaterSuctionHead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumRawWaterSuctionHead(Length newMaximumRawWaterSuctionHead) {
		Length oldMaximumRawWaterSuctionHead = maximumRawWaterSuctionHead;
		maximumRawWaterSuctionHead = newMaximumRawWaterSuctionHead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD, oldMaximumRawWaterSuctionHead, maximumRawWaterSuctionHead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getMaximumRawWaterVacuum() {
		return maximumRawWaterVacuum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumRawWaterVacuum(PressureDifference newMaximumRawWaterVacuum) {
		PressureDifference oldMaximumRawWaterVacuum = maximumRawWaterVacuum;
		maximumRawWaterVacuum = newMaximumRawWaterVacuum;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM, oldMaximumRawWaterVacuum, maximumRawWaterVacuum));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getMaximumRawWaterInletPressure() {
		return maximumRawWaterInletPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumRawWaterInletPressure(GaugePressure newMaximumRawWaterInletPressure) {
		GaugePressure oldMaximumRawWaterInletPressure = maximumRawWaterInletPressure;
		maximumRawWaterInletPressure = newMaximumRawWaterInletPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE, oldMaximumRawWaterInletPressure, maximumRawWaterInletPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumRawWaterHoseBore() {
		return minimumRawWaterHoseBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumRawWaterHoseBore(Length newMinimumRawWaterHoseBore) {
		Length oldMinimumRawWaterHoseBore = minimumRawWaterHoseBore;
		minimumRawWaterHoseBore = newMinimumRawWaterHoseBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE, oldMinimumRawWaterHoseBore, minimumRawWaterHoseBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMaximumFuelLift() {
		return maximumFuelLift;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumFuelLift(Length newMaximumFuelLift) {
		Length oldMaximumFuelLift = maximumFuelLift;
		maximumFuelLift = newMaximumFuelLift;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT, oldMaximumFuelLift, maximumFuelLift));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getMaximumFuelVacuum() {
		return maximumFuelVacuum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumFuelVacuum(PressureDifference newMaximumFuelVacuum) {
		PressureDifference oldMaximumFuelVacuum = maximumFuelVacuum;
		maximumFuelVacuum = newMaximumFuelVacuum;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM, oldMaximumFuelVacuum, maximumFuelVacuum));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMinimumFuelLineBore() {
		return minimumFuelLineBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumFuelLineBore(Length newMinimumFuelLineBore) {
		Length oldMinimumFuelLineBore = minimumFuelLineBore;
		minimumFuelLineBore = newMinimumFuelLineBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE, oldMinimumFuelLineBore, minimumFuelLineBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getRequiredSeparatorFlow() {
		return requiredSeparatorFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRequiredSeparatorFlow(VolumeFlow newRequiredSeparatorFlow) {
		VolumeFlow oldRequiredSeparatorFlow = requiredSeparatorFlow;
		requiredSeparatorFlow = newRequiredSeparatorFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW, oldRequiredSeparatorFlow, requiredSeparatorFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFilterFineness() {
		return filterFineness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFilterFineness(Length newFilterFineness) {
		Length oldFilterFineness = filterFineness;
		filterFineness = newFilterFineness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__FILTER_FINENESS, oldFilterFineness, filterFineness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Current getMinimumBatteryCcA() {
		return minimumBatteryCcA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumBatteryCcA(Current newMinimumBatteryCcA) {
		Current oldMinimumBatteryCcA = minimumBatteryCcA;
		minimumBatteryCcA = newMinimumBatteryCcA;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A, oldMinimumBatteryCcA, minimumBatteryCcA));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Charge getMinimumBatteryCapacity() {
		return minimumBatteryCapacity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumBatteryCapacity(Charge newMinimumBatteryCapacity) {
		Charge oldMinimumBatteryCapacity = minimumBatteryCapacity;
		minimumBatteryCapacity = newMinimumBatteryCapacity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY, oldMinimumBatteryCapacity, minimumBatteryCapacity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CrankingRatingDefinition getBatteryCrankingDefinition() {
		return batteryCrankingDefinition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatteryCrankingDefinition(CrankingRatingDefinition newBatteryCrankingDefinition) {
		CrankingRatingDefinition oldBatteryCrankingDefinition = batteryCrankingDefinition;
		batteryCrankingDefinition = newBatteryCrankingDefinition == null ? BATTERY_CRANKING_DEFINITION_EDEFAULT : newBatteryCrankingDefinition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION, oldBatteryCrankingDefinition, batteryCrankingDefinition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Resistance getMaximumCrankingCircuitResistance() {
		return maximumCrankingCircuitResistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumCrankingCircuitResistance(Resistance newMaximumCrankingCircuitResistance) {
		Resistance oldMaximumCrankingCircuitResistance = maximumCrankingCircuitResistance;
		maximumCrankingCircuitResistance = newMaximumCrankingCircuitResistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE, oldMaximumCrankingCircuitResistance, maximumCrankingCircuitResistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Voltage getMinimumCrankingVoltage() {
		return minimumCrankingVoltage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumCrankingVoltage(Voltage newMinimumCrankingVoltage) {
		Voltage oldMinimumCrankingVoltage = minimumCrankingVoltage;
		minimumCrankingVoltage = newMinimumCrankingVoltage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE, oldMinimumCrankingVoltage, minimumCrankingVoltage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getFeedPressureLow() {
		return feedPressureLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeedPressureLow(GaugePressure newFeedPressureLow) {
		GaugePressure oldFeedPressureLow = feedPressureLow;
		feedPressureLow = newFeedPressureLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW, oldFeedPressureLow, feedPressureLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getFeedPressureHigh() {
		return feedPressureHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeedPressureHigh(GaugePressure newFeedPressureHigh) {
		GaugePressure oldFeedPressureHigh = feedPressureHigh;
		feedPressureHigh = newFeedPressureHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH, oldFeedPressureHigh, feedPressureHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getRailPressureLow() {
		return railPressureLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailPressureLow(GaugePressure newRailPressureLow) {
		GaugePressure oldRailPressureLow = railPressureLow;
		railPressureLow = newRailPressureLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW, oldRailPressureLow, railPressureLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getRailPressureHigh() {
		return railPressureHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRailPressureHigh(GaugePressure newRailPressureHigh) {
		GaugePressure oldRailPressureHigh = railPressureHigh;
		railPressureHigh = newRailPressureHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH, oldRailPressureHigh, railPressureHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getMaximumCrankTime() {
		return maximumCrankTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumCrankTime(TimeSpan newMaximumCrankTime) {
		TimeSpan oldMaximumCrankTime = maximumCrankTime;
		maximumCrankTime = newMaximumCrankTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME, oldMaximumCrankTime, maximumCrankTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getMaximumTotalCrankTime() {
		return maximumTotalCrankTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumTotalCrankTime(TimeSpan newMaximumTotalCrankTime) {
		TimeSpan oldMaximumTotalCrankTime = maximumTotalCrankTime;
		maximumTotalCrankTime = newMaximumTotalCrankTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME, oldMaximumTotalCrankTime, maximumTotalCrankTime));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getMaximumCompartmentTemperature() {
		return maximumCompartmentTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumCompartmentTemperature(Temperature newMaximumCompartmentTemperature) {
		Temperature oldMaximumCompartmentTemperature = maximumCompartmentTemperature;
		maximumCompartmentTemperature = newMaximumCompartmentTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE, oldMaximumCompartmentTemperature, maximumCompartmentTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TemperatureDifference getMaximumCompartmentRise() {
		return maximumCompartmentRise;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumCompartmentRise(TemperatureDifference newMaximumCompartmentRise) {
		TemperatureDifference oldMaximumCompartmentRise = maximumCompartmentRise;
		maximumCompartmentRise = newMaximumCompartmentRise;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE, oldMaximumCompartmentRise, maximumCompartmentRise));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getMaximumDepression() {
		return maximumDepression;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumDepression(PressureDifference newMaximumDepression) {
		PressureDifference oldMaximumDepression = maximumDepression;
		maximumDepression = newMaximumDepression;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION, oldMaximumDepression, maximumDepression));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getMaximumHeel() {
		return maximumHeel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumHeel(Angle newMaximumHeel) {
		Angle oldMaximumHeel = maximumHeel;
		maximumHeel = newMaximumHeel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL, oldMaximumHeel, maximumHeel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Angle getMaximumTrim() {
		return maximumTrim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumTrim(Angle newMaximumTrim) {
		Angle oldMaximumTrim = maximumTrim;
		maximumTrim = newMaximumTrim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM, oldMaximumTrim, maximumTrim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getMaximumCoolantTemperature() {
		return maximumCoolantTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumCoolantTemperature(Temperature newMaximumCoolantTemperature) {
		Temperature oldMaximumCoolantTemperature = maximumCoolantTemperature;
		maximumCoolantTemperature = newMaximumCoolantTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE, oldMaximumCoolantTemperature, maximumCoolantTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getMinimumOilPressure() {
		return minimumOilPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumOilPressure(GaugePressure newMinimumOilPressure) {
		GaugePressure oldMinimumOilPressure = minimumOilPressure;
		minimumOilPressure = newMinimumOilPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE, oldMinimumOilPressure, minimumOilPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getMaximumExhaustTemperature() {
		return maximumExhaustTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumExhaustTemperature(Temperature newMaximumExhaustTemperature) {
		Temperature oldMaximumExhaustTemperature = maximumExhaustTemperature;
		maximumExhaustTemperature = newMaximumExhaustTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE, oldMaximumExhaustTemperature, maximumExhaustTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Area getMinimumVentilationArea() {
		return minimumVentilationArea;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumVentilationArea(Area newMinimumVentilationArea) {
		Area oldMinimumVentilationArea = minimumVentilationArea;
		minimumVentilationArea = newMinimumVentilationArea;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA, oldMinimumVentilationArea, minimumVentilationArea));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.MAKER_LIMITS__DOCUMENT:
				return getDocument();
			case GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE:
				return getDocumentPage();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE:
				return getMaximumBackPressure();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT:
				return getMaximumLiftHeight();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT:
				return getMinimumSiphonBreakHeight();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED:
				return getMinimumSiphonClearanceHeeled();
			case GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW:
				return getSiphonBreakNeededBelow();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP:
				return getMinimumInjectionDrop();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL:
				return getMinimumExhaustFall();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE:
				return getMinimumExhaustBore();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH:
				return getMaximumExhaustLength();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME:
				return getMinimumMufflerVolume();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW:
				return getMinimumRawWaterFlow();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD:
				return getMaximumRawWaterSuctionHead();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM:
				return getMaximumRawWaterVacuum();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE:
				return getMaximumRawWaterInletPressure();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE:
				return getMinimumRawWaterHoseBore();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT:
				return getMaximumFuelLift();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM:
				return getMaximumFuelVacuum();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE:
				return getMinimumFuelLineBore();
			case GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW:
				return getRequiredSeparatorFlow();
			case GarboardPackage.MAKER_LIMITS__FILTER_FINENESS:
				return getFilterFineness();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A:
				return getMinimumBatteryCcA();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY:
				return getMinimumBatteryCapacity();
			case GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION:
				return getBatteryCrankingDefinition();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE:
				return getMaximumCrankingCircuitResistance();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE:
				return getMinimumCrankingVoltage();
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW:
				return getFeedPressureLow();
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH:
				return getFeedPressureHigh();
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW:
				return getRailPressureLow();
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH:
				return getRailPressureHigh();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME:
				return getMaximumCrankTime();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME:
				return getMaximumTotalCrankTime();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE:
				return getMaximumCompartmentTemperature();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE:
				return getMaximumCompartmentRise();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION:
				return getMaximumDepression();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL:
				return getMaximumHeel();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM:
				return getMaximumTrim();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE:
				return getMaximumCoolantTemperature();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE:
				return getMinimumOilPressure();
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE:
				return getMaximumExhaustTemperature();
			case GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA:
				return getMinimumVentilationArea();
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
			case GarboardPackage.MAKER_LIMITS__DOCUMENT:
				setDocument((String)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE:
				setDocumentPage((String)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE:
				setMaximumBackPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT:
				setMaximumLiftHeight((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT:
				setMinimumSiphonBreakHeight((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED:
				setMinimumSiphonClearanceHeeled((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW:
				setSiphonBreakNeededBelow((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP:
				setMinimumInjectionDrop((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL:
				setMinimumExhaustFall((Slope)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE:
				setMinimumExhaustBore((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH:
				setMaximumExhaustLength((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME:
				setMinimumMufflerVolume((Volume)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW:
				setMinimumRawWaterFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD:
				setMaximumRawWaterSuctionHead((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM:
				setMaximumRawWaterVacuum((PressureDifference)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE:
				setMaximumRawWaterInletPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE:
				setMinimumRawWaterHoseBore((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT:
				setMaximumFuelLift((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM:
				setMaximumFuelVacuum((PressureDifference)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE:
				setMinimumFuelLineBore((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW:
				setRequiredSeparatorFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__FILTER_FINENESS:
				setFilterFineness((Length)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A:
				setMinimumBatteryCcA((Current)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY:
				setMinimumBatteryCapacity((Charge)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION:
				setBatteryCrankingDefinition((CrankingRatingDefinition)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE:
				setMaximumCrankingCircuitResistance((Resistance)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE:
				setMinimumCrankingVoltage((Voltage)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW:
				setFeedPressureLow((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH:
				setFeedPressureHigh((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW:
				setRailPressureLow((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH:
				setRailPressureHigh((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME:
				setMaximumCrankTime((TimeSpan)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME:
				setMaximumTotalCrankTime((TimeSpan)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE:
				setMaximumCompartmentTemperature((Temperature)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE:
				setMaximumCompartmentRise((TemperatureDifference)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION:
				setMaximumDepression((PressureDifference)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL:
				setMaximumHeel((Angle)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM:
				setMaximumTrim((Angle)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE:
				setMaximumCoolantTemperature((Temperature)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE:
				setMinimumOilPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE:
				setMaximumExhaustTemperature((Temperature)newValue);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA:
				setMinimumVentilationArea((Area)newValue);
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
			case GarboardPackage.MAKER_LIMITS__DOCUMENT:
				setDocument(DOCUMENT_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE:
				setDocumentPage(DOCUMENT_PAGE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE:
				setMaximumBackPressure(MAXIMUM_BACK_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT:
				setMaximumLiftHeight(MAXIMUM_LIFT_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT:
				setMinimumSiphonBreakHeight(MINIMUM_SIPHON_BREAK_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED:
				setMinimumSiphonClearanceHeeled(MINIMUM_SIPHON_CLEARANCE_HEELED_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW:
				setSiphonBreakNeededBelow(SIPHON_BREAK_NEEDED_BELOW_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP:
				setMinimumInjectionDrop(MINIMUM_INJECTION_DROP_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL:
				setMinimumExhaustFall(MINIMUM_EXHAUST_FALL_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE:
				setMinimumExhaustBore(MINIMUM_EXHAUST_BORE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH:
				setMaximumExhaustLength(MAXIMUM_EXHAUST_LENGTH_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME:
				setMinimumMufflerVolume(MINIMUM_MUFFLER_VOLUME_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW:
				setMinimumRawWaterFlow(MINIMUM_RAW_WATER_FLOW_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD:
				setMaximumRawWaterSuctionHead(MAXIMUM_RAW_WATER_SUCTION_HEAD_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM:
				setMaximumRawWaterVacuum(MAXIMUM_RAW_WATER_VACUUM_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE:
				setMaximumRawWaterInletPressure(MAXIMUM_RAW_WATER_INLET_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE:
				setMinimumRawWaterHoseBore(MINIMUM_RAW_WATER_HOSE_BORE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT:
				setMaximumFuelLift(MAXIMUM_FUEL_LIFT_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM:
				setMaximumFuelVacuum(MAXIMUM_FUEL_VACUUM_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE:
				setMinimumFuelLineBore(MINIMUM_FUEL_LINE_BORE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW:
				setRequiredSeparatorFlow(REQUIRED_SEPARATOR_FLOW_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__FILTER_FINENESS:
				setFilterFineness(FILTER_FINENESS_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A:
				setMinimumBatteryCcA(MINIMUM_BATTERY_CC_A_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY:
				setMinimumBatteryCapacity(MINIMUM_BATTERY_CAPACITY_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION:
				setBatteryCrankingDefinition(BATTERY_CRANKING_DEFINITION_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE:
				setMaximumCrankingCircuitResistance(MAXIMUM_CRANKING_CIRCUIT_RESISTANCE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE:
				setMinimumCrankingVoltage(MINIMUM_CRANKING_VOLTAGE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW:
				setFeedPressureLow(FEED_PRESSURE_LOW_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH:
				setFeedPressureHigh(FEED_PRESSURE_HIGH_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW:
				setRailPressureLow(RAIL_PRESSURE_LOW_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH:
				setRailPressureHigh(RAIL_PRESSURE_HIGH_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME:
				setMaximumCrankTime(MAXIMUM_CRANK_TIME_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME:
				setMaximumTotalCrankTime(MAXIMUM_TOTAL_CRANK_TIME_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE:
				setMaximumCompartmentTemperature(MAXIMUM_COMPARTMENT_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE:
				setMaximumCompartmentRise(MAXIMUM_COMPARTMENT_RISE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION:
				setMaximumDepression(MAXIMUM_DEPRESSION_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL:
				setMaximumHeel(MAXIMUM_HEEL_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM:
				setMaximumTrim(MAXIMUM_TRIM_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE:
				setMaximumCoolantTemperature(MAXIMUM_COOLANT_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE:
				setMinimumOilPressure(MINIMUM_OIL_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE:
				setMaximumExhaustTemperature(MAXIMUM_EXHAUST_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA:
				setMinimumVentilationArea(MINIMUM_VENTILATION_AREA_EDEFAULT);
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
			case GarboardPackage.MAKER_LIMITS__DOCUMENT:
				return DOCUMENT_EDEFAULT == null ? document != null : !DOCUMENT_EDEFAULT.equals(document);
			case GarboardPackage.MAKER_LIMITS__DOCUMENT_PAGE:
				return DOCUMENT_PAGE_EDEFAULT == null ? documentPage != null : !DOCUMENT_PAGE_EDEFAULT.equals(documentPage);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE:
				return MAXIMUM_BACK_PRESSURE_EDEFAULT == null ? maximumBackPressure != null : !MAXIMUM_BACK_PRESSURE_EDEFAULT.equals(maximumBackPressure);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT:
				return MAXIMUM_LIFT_HEIGHT_EDEFAULT == null ? maximumLiftHeight != null : !MAXIMUM_LIFT_HEIGHT_EDEFAULT.equals(maximumLiftHeight);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_BREAK_HEIGHT:
				return MINIMUM_SIPHON_BREAK_HEIGHT_EDEFAULT == null ? minimumSiphonBreakHeight != null : !MINIMUM_SIPHON_BREAK_HEIGHT_EDEFAULT.equals(minimumSiphonBreakHeight);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_SIPHON_CLEARANCE_HEELED:
				return MINIMUM_SIPHON_CLEARANCE_HEELED_EDEFAULT == null ? minimumSiphonClearanceHeeled != null : !MINIMUM_SIPHON_CLEARANCE_HEELED_EDEFAULT.equals(minimumSiphonClearanceHeeled);
			case GarboardPackage.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW:
				return SIPHON_BREAK_NEEDED_BELOW_EDEFAULT == null ? siphonBreakNeededBelow != null : !SIPHON_BREAK_NEEDED_BELOW_EDEFAULT.equals(siphonBreakNeededBelow);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_INJECTION_DROP:
				return MINIMUM_INJECTION_DROP_EDEFAULT == null ? minimumInjectionDrop != null : !MINIMUM_INJECTION_DROP_EDEFAULT.equals(minimumInjectionDrop);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_FALL:
				return MINIMUM_EXHAUST_FALL_EDEFAULT == null ? minimumExhaustFall != null : !MINIMUM_EXHAUST_FALL_EDEFAULT.equals(minimumExhaustFall);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_EXHAUST_BORE:
				return MINIMUM_EXHAUST_BORE_EDEFAULT == null ? minimumExhaustBore != null : !MINIMUM_EXHAUST_BORE_EDEFAULT.equals(minimumExhaustBore);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH:
				return MAXIMUM_EXHAUST_LENGTH_EDEFAULT == null ? maximumExhaustLength != null : !MAXIMUM_EXHAUST_LENGTH_EDEFAULT.equals(maximumExhaustLength);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_MUFFLER_VOLUME:
				return MINIMUM_MUFFLER_VOLUME_EDEFAULT == null ? minimumMufflerVolume != null : !MINIMUM_MUFFLER_VOLUME_EDEFAULT.equals(minimumMufflerVolume);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW:
				return MINIMUM_RAW_WATER_FLOW_EDEFAULT == null ? minimumRawWaterFlow != null : !MINIMUM_RAW_WATER_FLOW_EDEFAULT.equals(minimumRawWaterFlow);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD:
				return MAXIMUM_RAW_WATER_SUCTION_HEAD_EDEFAULT == null ? maximumRawWaterSuctionHead != null : !MAXIMUM_RAW_WATER_SUCTION_HEAD_EDEFAULT.equals(maximumRawWaterSuctionHead);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_VACUUM:
				return MAXIMUM_RAW_WATER_VACUUM_EDEFAULT == null ? maximumRawWaterVacuum != null : !MAXIMUM_RAW_WATER_VACUUM_EDEFAULT.equals(maximumRawWaterVacuum);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_RAW_WATER_INLET_PRESSURE:
				return MAXIMUM_RAW_WATER_INLET_PRESSURE_EDEFAULT == null ? maximumRawWaterInletPressure != null : !MAXIMUM_RAW_WATER_INLET_PRESSURE_EDEFAULT.equals(maximumRawWaterInletPressure);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE:
				return MINIMUM_RAW_WATER_HOSE_BORE_EDEFAULT == null ? minimumRawWaterHoseBore != null : !MINIMUM_RAW_WATER_HOSE_BORE_EDEFAULT.equals(minimumRawWaterHoseBore);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_LIFT:
				return MAXIMUM_FUEL_LIFT_EDEFAULT == null ? maximumFuelLift != null : !MAXIMUM_FUEL_LIFT_EDEFAULT.equals(maximumFuelLift);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM:
				return MAXIMUM_FUEL_VACUUM_EDEFAULT == null ? maximumFuelVacuum != null : !MAXIMUM_FUEL_VACUUM_EDEFAULT.equals(maximumFuelVacuum);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_FUEL_LINE_BORE:
				return MINIMUM_FUEL_LINE_BORE_EDEFAULT == null ? minimumFuelLineBore != null : !MINIMUM_FUEL_LINE_BORE_EDEFAULT.equals(minimumFuelLineBore);
			case GarboardPackage.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW:
				return REQUIRED_SEPARATOR_FLOW_EDEFAULT == null ? requiredSeparatorFlow != null : !REQUIRED_SEPARATOR_FLOW_EDEFAULT.equals(requiredSeparatorFlow);
			case GarboardPackage.MAKER_LIMITS__FILTER_FINENESS:
				return FILTER_FINENESS_EDEFAULT == null ? filterFineness != null : !FILTER_FINENESS_EDEFAULT.equals(filterFineness);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CC_A:
				return MINIMUM_BATTERY_CC_A_EDEFAULT == null ? minimumBatteryCcA != null : !MINIMUM_BATTERY_CC_A_EDEFAULT.equals(minimumBatteryCcA);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY:
				return MINIMUM_BATTERY_CAPACITY_EDEFAULT == null ? minimumBatteryCapacity != null : !MINIMUM_BATTERY_CAPACITY_EDEFAULT.equals(minimumBatteryCapacity);
			case GarboardPackage.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION:
				return batteryCrankingDefinition != BATTERY_CRANKING_DEFINITION_EDEFAULT;
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE:
				return MAXIMUM_CRANKING_CIRCUIT_RESISTANCE_EDEFAULT == null ? maximumCrankingCircuitResistance != null : !MAXIMUM_CRANKING_CIRCUIT_RESISTANCE_EDEFAULT.equals(maximumCrankingCircuitResistance);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE:
				return MINIMUM_CRANKING_VOLTAGE_EDEFAULT == null ? minimumCrankingVoltage != null : !MINIMUM_CRANKING_VOLTAGE_EDEFAULT.equals(minimumCrankingVoltage);
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_LOW:
				return FEED_PRESSURE_LOW_EDEFAULT == null ? feedPressureLow != null : !FEED_PRESSURE_LOW_EDEFAULT.equals(feedPressureLow);
			case GarboardPackage.MAKER_LIMITS__FEED_PRESSURE_HIGH:
				return FEED_PRESSURE_HIGH_EDEFAULT == null ? feedPressureHigh != null : !FEED_PRESSURE_HIGH_EDEFAULT.equals(feedPressureHigh);
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_LOW:
				return RAIL_PRESSURE_LOW_EDEFAULT == null ? railPressureLow != null : !RAIL_PRESSURE_LOW_EDEFAULT.equals(railPressureLow);
			case GarboardPackage.MAKER_LIMITS__RAIL_PRESSURE_HIGH:
				return RAIL_PRESSURE_HIGH_EDEFAULT == null ? railPressureHigh != null : !RAIL_PRESSURE_HIGH_EDEFAULT.equals(railPressureHigh);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_CRANK_TIME:
				return MAXIMUM_CRANK_TIME_EDEFAULT == null ? maximumCrankTime != null : !MAXIMUM_CRANK_TIME_EDEFAULT.equals(maximumCrankTime);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME:
				return MAXIMUM_TOTAL_CRANK_TIME_EDEFAULT == null ? maximumTotalCrankTime != null : !MAXIMUM_TOTAL_CRANK_TIME_EDEFAULT.equals(maximumTotalCrankTime);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_TEMPERATURE:
				return MAXIMUM_COMPARTMENT_TEMPERATURE_EDEFAULT == null ? maximumCompartmentTemperature != null : !MAXIMUM_COMPARTMENT_TEMPERATURE_EDEFAULT.equals(maximumCompartmentTemperature);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE:
				return MAXIMUM_COMPARTMENT_RISE_EDEFAULT == null ? maximumCompartmentRise != null : !MAXIMUM_COMPARTMENT_RISE_EDEFAULT.equals(maximumCompartmentRise);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_DEPRESSION:
				return MAXIMUM_DEPRESSION_EDEFAULT == null ? maximumDepression != null : !MAXIMUM_DEPRESSION_EDEFAULT.equals(maximumDepression);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_HEEL:
				return MAXIMUM_HEEL_EDEFAULT == null ? maximumHeel != null : !MAXIMUM_HEEL_EDEFAULT.equals(maximumHeel);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_TRIM:
				return MAXIMUM_TRIM_EDEFAULT == null ? maximumTrim != null : !MAXIMUM_TRIM_EDEFAULT.equals(maximumTrim);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_COOLANT_TEMPERATURE:
				return MAXIMUM_COOLANT_TEMPERATURE_EDEFAULT == null ? maximumCoolantTemperature != null : !MAXIMUM_COOLANT_TEMPERATURE_EDEFAULT.equals(maximumCoolantTemperature);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_OIL_PRESSURE:
				return MINIMUM_OIL_PRESSURE_EDEFAULT == null ? minimumOilPressure != null : !MINIMUM_OIL_PRESSURE_EDEFAULT.equals(minimumOilPressure);
			case GarboardPackage.MAKER_LIMITS__MAXIMUM_EXHAUST_TEMPERATURE:
				return MAXIMUM_EXHAUST_TEMPERATURE_EDEFAULT == null ? maximumExhaustTemperature != null : !MAXIMUM_EXHAUST_TEMPERATURE_EDEFAULT.equals(maximumExhaustTemperature);
			case GarboardPackage.MAKER_LIMITS__MINIMUM_VENTILATION_AREA:
				return MINIMUM_VENTILATION_AREA_EDEFAULT == null ? minimumVentilationArea != null : !MINIMUM_VENTILATION_AREA_EDEFAULT.equals(minimumVentilationArea);
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
		result.append(" (document: ");
		result.append(document);
		result.append(", documentPage: ");
		result.append(documentPage);
		result.append(", maximumBackPressure: ");
		result.append(maximumBackPressure);
		result.append(", maximumLiftHeight: ");
		result.append(maximumLiftHeight);
		result.append(", minimumSiphonBreakHeight: ");
		result.append(minimumSiphonBreakHeight);
		result.append(", minimumSiphonClearanceHeeled: ");
		result.append(minimumSiphonClearanceHeeled);
		result.append(", siphonBreakNeededBelow: ");
		result.append(siphonBreakNeededBelow);
		result.append(", minimumInjectionDrop: ");
		result.append(minimumInjectionDrop);
		result.append(", minimumExhaustFall: ");
		result.append(minimumExhaustFall);
		result.append(", minimumExhaustBore: ");
		result.append(minimumExhaustBore);
		result.append(", maximumExhaustLength: ");
		result.append(maximumExhaustLength);
		result.append(", minimumMufflerVolume: ");
		result.append(minimumMufflerVolume);
		result.append(", minimumRawWaterFlow: ");
		result.append(minimumRawWaterFlow);
		result.append(", maximumRawWaterSuctionHead: ");
		result.append(maximumRawWaterSuctionHead);
		result.append(", maximumRawWaterVacuum: ");
		result.append(maximumRawWaterVacuum);
		result.append(", maximumRawWaterInletPressure: ");
		result.append(maximumRawWaterInletPressure);
		result.append(", minimumRawWaterHoseBore: ");
		result.append(minimumRawWaterHoseBore);
		result.append(", maximumFuelLift: ");
		result.append(maximumFuelLift);
		result.append(", maximumFuelVacuum: ");
		result.append(maximumFuelVacuum);
		result.append(", minimumFuelLineBore: ");
		result.append(minimumFuelLineBore);
		result.append(", requiredSeparatorFlow: ");
		result.append(requiredSeparatorFlow);
		result.append(", filterFineness: ");
		result.append(filterFineness);
		result.append(", minimumBatteryCcA: ");
		result.append(minimumBatteryCcA);
		result.append(", minimumBatteryCapacity: ");
		result.append(minimumBatteryCapacity);
		result.append(", batteryCrankingDefinition: ");
		result.append(batteryCrankingDefinition);
		result.append(", maximumCrankingCircuitResistance: ");
		result.append(maximumCrankingCircuitResistance);
		result.append(", minimumCrankingVoltage: ");
		result.append(minimumCrankingVoltage);
		result.append(", feedPressureLow: ");
		result.append(feedPressureLow);
		result.append(", feedPressureHigh: ");
		result.append(feedPressureHigh);
		result.append(", railPressureLow: ");
		result.append(railPressureLow);
		result.append(", railPressureHigh: ");
		result.append(railPressureHigh);
		result.append(", maximumCrankTime: ");
		result.append(maximumCrankTime);
		result.append(", maximumTotalCrankTime: ");
		result.append(maximumTotalCrankTime);
		result.append(", maximumCompartmentTemperature: ");
		result.append(maximumCompartmentTemperature);
		result.append(", maximumCompartmentRise: ");
		result.append(maximumCompartmentRise);
		result.append(", maximumDepression: ");
		result.append(maximumDepression);
		result.append(", maximumHeel: ");
		result.append(maximumHeel);
		result.append(", maximumTrim: ");
		result.append(maximumTrim);
		result.append(", maximumCoolantTemperature: ");
		result.append(maximumCoolantTemperature);
		result.append(", minimumOilPressure: ");
		result.append(minimumOilPressure);
		result.append(", maximumExhaustTemperature: ");
		result.append(maximumExhaustTemperature);
		result.append(", minimumVentilationArea: ");
		result.append(minimumVentilationArea);
		result.append(')');
		return result.toString();
	}

} //MakerLimitsImpl
