/**
 */
package garboard.model.impl;

import garboard.model.AlarmDevice;
import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.FuelPriming;
import garboard.model.GarboardPackage;
import garboard.model.LoadStep;
import garboard.model.ProcedureStep;
import garboard.model.SeaRun;
import garboard.model.Trial;
import garboard.model.TrialPlace;

import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.TrialImpl#getDate <em>Date</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getLocation <em>Location</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getPeople <em>People</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getSeaTemperature <em>Sea Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getBarometricPressure <em>Barometric Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getRelativeHumidity <em>Relative Humidity</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getHeadOfWater <em>Head Of Water</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getProcedure <em>Procedure</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getPriming <em>Priming</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getAttempts <em>Attempts</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getLoadSteps <em>Load Steps</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getShutdownTests <em>Shutdown Tests</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getSeaRun <em>Sea Run</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getCoolantLevelCold <em>Coolant Level Cold</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getCoolantLevelHot <em>Coolant Level Hot</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getCoolantLevelColdAgain <em>Coolant Level Cold Again</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getLeaksCold <em>Leaks Cold</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getLeaksHot <em>Leaks Hot</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getWaterAtOutletAfter <em>Water At Outlet After</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getOilPressureAfter <em>Oil Pressure After</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getMufflerLevelChecked <em>Muffler Level Checked</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link garboard.model.impl.TrialImpl#getCarbonMonoxideCabin <em>Carbon Monoxide Cabin</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TrialImpl extends MinimalEObjectImpl.Container implements Trial {
	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected LocalDate date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final TrialPlace PLACE_EDEFAULT = TrialPlace.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected TrialPlace place = PLACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected static final String LOCATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected String location = LOCATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getPeople() <em>People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected static final String PEOPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPeople() <em>People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected String people = PEOPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeaTemperature() <em>Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeaTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature SEA_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSeaTemperature() <em>Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeaTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature seaTemperature = SEA_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature OUTSIDE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutsideTemperature() <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutsideTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature outsideTemperature = OUTSIDE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBarometricPressure() <em>Barometric Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarometricPressure()
	 * @generated
	 * @ordered
	 */
	protected static final AbsolutePressure BAROMETRIC_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBarometricPressure() <em>Barometric Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarometricPressure()
	 * @generated
	 * @ordered
	 */
	protected AbsolutePressure barometricPressure = BAROMETRIC_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRelativeHumidity() <em>Relative Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelativeHumidity()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio RELATIVE_HUMIDITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRelativeHumidity() <em>Relative Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRelativeHumidity()
	 * @generated
	 * @ordered
	 */
	protected Ratio relativeHumidity = RELATIVE_HUMIDITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeadOfWater() <em>Head Of Water</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadOfWater()
	 * @generated
	 * @ordered
	 */
	protected static final Length HEAD_OF_WATER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeadOfWater() <em>Head Of Water</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeadOfWater()
	 * @generated
	 * @ordered
	 */
	protected Length headOfWater = HEAD_OF_WATER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getProcedure() <em>Procedure</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcedure()
	 * @generated
	 * @ordered
	 */
	protected EList<ProcedureStep> procedure;

	/**
	 * The cached value of the '{@link #getPriming() <em>Priming</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPriming()
	 * @generated
	 * @ordered
	 */
	protected FuelPriming priming;

	/**
	 * The cached value of the '{@link #getAttempts() <em>Attempts</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAttempts()
	 * @generated
	 * @ordered
	 */
	protected EList<CrankingAttempt> attempts;

	/**
	 * The cached value of the '{@link #getLoadSteps() <em>Load Steps</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoadSteps()
	 * @generated
	 * @ordered
	 */
	protected EList<LoadStep> loadSteps;

	/**
	 * The cached value of the '{@link #getShutdownTests() <em>Shutdown Tests</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShutdownTests()
	 * @generated
	 * @ordered
	 */
	protected EList<AlarmDevice> shutdownTests;

	/**
	 * The cached value of the '{@link #getSeaRun() <em>Sea Run</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeaRun()
	 * @generated
	 * @ordered
	 */
	protected SeaRun seaRun;

	/**
	 * The default value of the '{@link #getCoolantLevelCold() <em>Coolant Level Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelCold()
	 * @generated
	 * @ordered
	 */
	protected static final String COOLANT_LEVEL_COLD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoolantLevelCold() <em>Coolant Level Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelCold()
	 * @generated
	 * @ordered
	 */
	protected String coolantLevelCold = COOLANT_LEVEL_COLD_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoolantLevelHot() <em>Coolant Level Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelHot()
	 * @generated
	 * @ordered
	 */
	protected static final String COOLANT_LEVEL_HOT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoolantLevelHot() <em>Coolant Level Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelHot()
	 * @generated
	 * @ordered
	 */
	protected String coolantLevelHot = COOLANT_LEVEL_HOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoolantLevelColdAgain() <em>Coolant Level Cold Again</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelColdAgain()
	 * @generated
	 * @ordered
	 */
	protected static final String COOLANT_LEVEL_COLD_AGAIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoolantLevelColdAgain() <em>Coolant Level Cold Again</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolantLevelColdAgain()
	 * @generated
	 * @ordered
	 */
	protected String coolantLevelColdAgain = COOLANT_LEVEL_COLD_AGAIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeaksCold() <em>Leaks Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaksCold()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEAKS_COLD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLeaksCold() <em>Leaks Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaksCold()
	 * @generated
	 * @ordered
	 */
	protected Answer leaksCold = LEAKS_COLD_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeaksHot() <em>Leaks Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaksHot()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEAKS_HOT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLeaksHot() <em>Leaks Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaksHot()
	 * @generated
	 * @ordered
	 */
	protected Answer leaksHot = LEAKS_HOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterAtOutletAfter() <em>Water At Outlet After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterAtOutletAfter()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan WATER_AT_OUTLET_AFTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWaterAtOutletAfter() <em>Water At Outlet After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterAtOutletAfter()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan waterAtOutletAfter = WATER_AT_OUTLET_AFTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getOilPressureAfter() <em>Oil Pressure After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOilPressureAfter()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan OIL_PRESSURE_AFTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOilPressureAfter() <em>Oil Pressure After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOilPressureAfter()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan oilPressureAfter = OIL_PRESSURE_AFTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getMufflerLevelChecked() <em>Muffler Level Checked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMufflerLevelChecked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer MUFFLER_LEVEL_CHECKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getMufflerLevelChecked() <em>Muffler Level Checked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMufflerLevelChecked()
	 * @generated
	 * @ordered
	 */
	protected Answer mufflerLevelChecked = MUFFLER_LEVEL_CHECKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getRemarks() <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemarks()
	 * @generated
	 * @ordered
	 */
	protected static final String REMARKS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRemarks() <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemarks()
	 * @generated
	 * @ordered
	 */
	protected String remarks = REMARKS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCarbonMonoxideCabin() <em>Carbon Monoxide Cabin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideCabin()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio CARBON_MONOXIDE_CABIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCarbonMonoxideCabin() <em>Carbon Monoxide Cabin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarbonMonoxideCabin()
	 * @generated
	 * @ordered
	 */
	protected Ratio carbonMonoxideCabin = CARBON_MONOXIDE_CABIN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TrialImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.TRIAL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate) {
		LocalDate oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TrialPlace getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(TrialPlace newPlace) {
		TrialPlace oldPlace = place;
		place = newPlace == null ? PLACE_EDEFAULT : newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLocation() {
		return location;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocation(String newLocation) {
		String oldLocation = location;
		location = newLocation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__LOCATION, oldLocation, location));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPeople() {
		return people;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeople(String newPeople) {
		String oldPeople = people;
		people = newPeople;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__PEOPLE, oldPeople, people));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getSeaTemperature() {
		return seaTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeaTemperature(Temperature newSeaTemperature) {
		Temperature oldSeaTemperature = seaTemperature;
		seaTemperature = newSeaTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__SEA_TEMPERATURE, oldSeaTemperature, seaTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getOutsideTemperature() {
		return outsideTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutsideTemperature(Temperature newOutsideTemperature) {
		Temperature oldOutsideTemperature = outsideTemperature;
		outsideTemperature = newOutsideTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE, oldOutsideTemperature, outsideTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AbsolutePressure getBarometricPressure() {
		return barometricPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBarometricPressure(AbsolutePressure newBarometricPressure) {
		AbsolutePressure oldBarometricPressure = barometricPressure;
		barometricPressure = newBarometricPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__BAROMETRIC_PRESSURE, oldBarometricPressure, barometricPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getRelativeHumidity() {
		return relativeHumidity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRelativeHumidity(Ratio newRelativeHumidity) {
		Ratio oldRelativeHumidity = relativeHumidity;
		relativeHumidity = newRelativeHumidity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__RELATIVE_HUMIDITY, oldRelativeHumidity, relativeHumidity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getHeadOfWater() {
		return headOfWater;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadOfWater(Length newHeadOfWater) {
		Length oldHeadOfWater = headOfWater;
		headOfWater = newHeadOfWater;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__HEAD_OF_WATER, oldHeadOfWater, headOfWater));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ProcedureStep> getProcedure() {
		if (procedure == null) {
			procedure = new EObjectContainmentEList<ProcedureStep>(ProcedureStep.class, this, GarboardPackage.TRIAL__PROCEDURE);
		}
		return procedure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FuelPriming getPriming() {
		return priming;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPriming(FuelPriming newPriming, NotificationChain msgs) {
		FuelPriming oldPriming = priming;
		priming = newPriming;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__PRIMING, oldPriming, newPriming);
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
	public void setPriming(FuelPriming newPriming) {
		if (newPriming != priming) {
			NotificationChain msgs = null;
			if (priming != null)
				msgs = ((InternalEObject)priming).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.TRIAL__PRIMING, null, msgs);
			if (newPriming != null)
				msgs = ((InternalEObject)newPriming).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.TRIAL__PRIMING, null, msgs);
			msgs = basicSetPriming(newPriming, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__PRIMING, newPriming, newPriming));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<CrankingAttempt> getAttempts() {
		if (attempts == null) {
			attempts = new EObjectContainmentEList<CrankingAttempt>(CrankingAttempt.class, this, GarboardPackage.TRIAL__ATTEMPTS);
		}
		return attempts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LoadStep> getLoadSteps() {
		if (loadSteps == null) {
			loadSteps = new EObjectContainmentEList<LoadStep>(LoadStep.class, this, GarboardPackage.TRIAL__LOAD_STEPS);
		}
		return loadSteps;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AlarmDevice> getShutdownTests() {
		if (shutdownTests == null) {
			shutdownTests = new EObjectContainmentEList<AlarmDevice>(AlarmDevice.class, this, GarboardPackage.TRIAL__SHUTDOWN_TESTS);
		}
		return shutdownTests;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeaRun getSeaRun() {
		return seaRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSeaRun(SeaRun newSeaRun, NotificationChain msgs) {
		SeaRun oldSeaRun = seaRun;
		seaRun = newSeaRun;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__SEA_RUN, oldSeaRun, newSeaRun);
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
	public void setSeaRun(SeaRun newSeaRun) {
		if (newSeaRun != seaRun) {
			NotificationChain msgs = null;
			if (seaRun != null)
				msgs = ((InternalEObject)seaRun).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.TRIAL__SEA_RUN, null, msgs);
			if (newSeaRun != null)
				msgs = ((InternalEObject)newSeaRun).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.TRIAL__SEA_RUN, null, msgs);
			msgs = basicSetSeaRun(newSeaRun, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__SEA_RUN, newSeaRun, newSeaRun));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCoolantLevelCold() {
		return coolantLevelCold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolantLevelCold(String newCoolantLevelCold) {
		String oldCoolantLevelCold = coolantLevelCold;
		coolantLevelCold = newCoolantLevelCold;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__COOLANT_LEVEL_COLD, oldCoolantLevelCold, coolantLevelCold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCoolantLevelHot() {
		return coolantLevelHot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolantLevelHot(String newCoolantLevelHot) {
		String oldCoolantLevelHot = coolantLevelHot;
		coolantLevelHot = newCoolantLevelHot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__COOLANT_LEVEL_HOT, oldCoolantLevelHot, coolantLevelHot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCoolantLevelColdAgain() {
		return coolantLevelColdAgain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolantLevelColdAgain(String newCoolantLevelColdAgain) {
		String oldCoolantLevelColdAgain = coolantLevelColdAgain;
		coolantLevelColdAgain = newCoolantLevelColdAgain;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN, oldCoolantLevelColdAgain, coolantLevelColdAgain));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLeaksCold() {
		return leaksCold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeaksCold(Answer newLeaksCold) {
		Answer oldLeaksCold = leaksCold;
		leaksCold = newLeaksCold == null ? LEAKS_COLD_EDEFAULT : newLeaksCold;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__LEAKS_COLD, oldLeaksCold, leaksCold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLeaksHot() {
		return leaksHot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeaksHot(Answer newLeaksHot) {
		Answer oldLeaksHot = leaksHot;
		leaksHot = newLeaksHot == null ? LEAKS_HOT_EDEFAULT : newLeaksHot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__LEAKS_HOT, oldLeaksHot, leaksHot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getWaterAtOutletAfter() {
		return waterAtOutletAfter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterAtOutletAfter(TimeSpan newWaterAtOutletAfter) {
		TimeSpan oldWaterAtOutletAfter = waterAtOutletAfter;
		waterAtOutletAfter = newWaterAtOutletAfter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER, oldWaterAtOutletAfter, waterAtOutletAfter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getOilPressureAfter() {
		return oilPressureAfter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOilPressureAfter(TimeSpan newOilPressureAfter) {
		TimeSpan oldOilPressureAfter = oilPressureAfter;
		oilPressureAfter = newOilPressureAfter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__OIL_PRESSURE_AFTER, oldOilPressureAfter, oilPressureAfter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getMufflerLevelChecked() {
		return mufflerLevelChecked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMufflerLevelChecked(Answer newMufflerLevelChecked) {
		Answer oldMufflerLevelChecked = mufflerLevelChecked;
		mufflerLevelChecked = newMufflerLevelChecked == null ? MUFFLER_LEVEL_CHECKED_EDEFAULT : newMufflerLevelChecked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED, oldMufflerLevelChecked, mufflerLevelChecked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRemarks() {
		return remarks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemarks(String newRemarks) {
		String oldRemarks = remarks;
		remarks = newRemarks;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__REMARKS, oldRemarks, remarks));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getCarbonMonoxideCabin() {
		return carbonMonoxideCabin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarbonMonoxideCabin(Ratio newCarbonMonoxideCabin) {
		Ratio oldCarbonMonoxideCabin = carbonMonoxideCabin;
		carbonMonoxideCabin = newCarbonMonoxideCabin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN, oldCarbonMonoxideCabin, carbonMonoxideCabin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.TRIAL__PROCEDURE:
				return ((InternalEList<?>)getProcedure()).basicRemove(otherEnd, msgs);
			case GarboardPackage.TRIAL__PRIMING:
				return basicSetPriming(null, msgs);
			case GarboardPackage.TRIAL__ATTEMPTS:
				return ((InternalEList<?>)getAttempts()).basicRemove(otherEnd, msgs);
			case GarboardPackage.TRIAL__LOAD_STEPS:
				return ((InternalEList<?>)getLoadSteps()).basicRemove(otherEnd, msgs);
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
				return ((InternalEList<?>)getShutdownTests()).basicRemove(otherEnd, msgs);
			case GarboardPackage.TRIAL__SEA_RUN:
				return basicSetSeaRun(null, msgs);
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
			case GarboardPackage.TRIAL__DATE:
				return getDate();
			case GarboardPackage.TRIAL__PLACE:
				return getPlace();
			case GarboardPackage.TRIAL__LOCATION:
				return getLocation();
			case GarboardPackage.TRIAL__PEOPLE:
				return getPeople();
			case GarboardPackage.TRIAL__SEA_TEMPERATURE:
				return getSeaTemperature();
			case GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE:
				return getOutsideTemperature();
			case GarboardPackage.TRIAL__BAROMETRIC_PRESSURE:
				return getBarometricPressure();
			case GarboardPackage.TRIAL__RELATIVE_HUMIDITY:
				return getRelativeHumidity();
			case GarboardPackage.TRIAL__HEAD_OF_WATER:
				return getHeadOfWater();
			case GarboardPackage.TRIAL__PROCEDURE:
				return getProcedure();
			case GarboardPackage.TRIAL__PRIMING:
				return getPriming();
			case GarboardPackage.TRIAL__ATTEMPTS:
				return getAttempts();
			case GarboardPackage.TRIAL__LOAD_STEPS:
				return getLoadSteps();
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
				return getShutdownTests();
			case GarboardPackage.TRIAL__SEA_RUN:
				return getSeaRun();
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD:
				return getCoolantLevelCold();
			case GarboardPackage.TRIAL__COOLANT_LEVEL_HOT:
				return getCoolantLevelHot();
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN:
				return getCoolantLevelColdAgain();
			case GarboardPackage.TRIAL__LEAKS_COLD:
				return getLeaksCold();
			case GarboardPackage.TRIAL__LEAKS_HOT:
				return getLeaksHot();
			case GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER:
				return getWaterAtOutletAfter();
			case GarboardPackage.TRIAL__OIL_PRESSURE_AFTER:
				return getOilPressureAfter();
			case GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED:
				return getMufflerLevelChecked();
			case GarboardPackage.TRIAL__REMARKS:
				return getRemarks();
			case GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN:
				return getCarbonMonoxideCabin();
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
			case GarboardPackage.TRIAL__DATE:
				setDate((LocalDate)newValue);
				return;
			case GarboardPackage.TRIAL__PLACE:
				setPlace((TrialPlace)newValue);
				return;
			case GarboardPackage.TRIAL__LOCATION:
				setLocation((String)newValue);
				return;
			case GarboardPackage.TRIAL__PEOPLE:
				setPeople((String)newValue);
				return;
			case GarboardPackage.TRIAL__SEA_TEMPERATURE:
				setSeaTemperature((Temperature)newValue);
				return;
			case GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE:
				setOutsideTemperature((Temperature)newValue);
				return;
			case GarboardPackage.TRIAL__BAROMETRIC_PRESSURE:
				setBarometricPressure((AbsolutePressure)newValue);
				return;
			case GarboardPackage.TRIAL__RELATIVE_HUMIDITY:
				setRelativeHumidity((Ratio)newValue);
				return;
			case GarboardPackage.TRIAL__HEAD_OF_WATER:
				setHeadOfWater((Length)newValue);
				return;
			case GarboardPackage.TRIAL__PROCEDURE:
				getProcedure().clear();
				getProcedure().addAll((Collection<? extends ProcedureStep>)newValue);
				return;
			case GarboardPackage.TRIAL__PRIMING:
				setPriming((FuelPriming)newValue);
				return;
			case GarboardPackage.TRIAL__ATTEMPTS:
				getAttempts().clear();
				getAttempts().addAll((Collection<? extends CrankingAttempt>)newValue);
				return;
			case GarboardPackage.TRIAL__LOAD_STEPS:
				getLoadSteps().clear();
				getLoadSteps().addAll((Collection<? extends LoadStep>)newValue);
				return;
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
				getShutdownTests().clear();
				getShutdownTests().addAll((Collection<? extends AlarmDevice>)newValue);
				return;
			case GarboardPackage.TRIAL__SEA_RUN:
				setSeaRun((SeaRun)newValue);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD:
				setCoolantLevelCold((String)newValue);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_HOT:
				setCoolantLevelHot((String)newValue);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN:
				setCoolantLevelColdAgain((String)newValue);
				return;
			case GarboardPackage.TRIAL__LEAKS_COLD:
				setLeaksCold((Answer)newValue);
				return;
			case GarboardPackage.TRIAL__LEAKS_HOT:
				setLeaksHot((Answer)newValue);
				return;
			case GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER:
				setWaterAtOutletAfter((TimeSpan)newValue);
				return;
			case GarboardPackage.TRIAL__OIL_PRESSURE_AFTER:
				setOilPressureAfter((TimeSpan)newValue);
				return;
			case GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED:
				setMufflerLevelChecked((Answer)newValue);
				return;
			case GarboardPackage.TRIAL__REMARKS:
				setRemarks((String)newValue);
				return;
			case GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN:
				setCarbonMonoxideCabin((Ratio)newValue);
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
			case GarboardPackage.TRIAL__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__LOCATION:
				setLocation(LOCATION_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__PEOPLE:
				setPeople(PEOPLE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__SEA_TEMPERATURE:
				setSeaTemperature(SEA_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE:
				setOutsideTemperature(OUTSIDE_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__BAROMETRIC_PRESSURE:
				setBarometricPressure(BAROMETRIC_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__RELATIVE_HUMIDITY:
				setRelativeHumidity(RELATIVE_HUMIDITY_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__HEAD_OF_WATER:
				setHeadOfWater(HEAD_OF_WATER_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__PROCEDURE:
				getProcedure().clear();
				return;
			case GarboardPackage.TRIAL__PRIMING:
				setPriming((FuelPriming)null);
				return;
			case GarboardPackage.TRIAL__ATTEMPTS:
				getAttempts().clear();
				return;
			case GarboardPackage.TRIAL__LOAD_STEPS:
				getLoadSteps().clear();
				return;
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
				getShutdownTests().clear();
				return;
			case GarboardPackage.TRIAL__SEA_RUN:
				setSeaRun((SeaRun)null);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD:
				setCoolantLevelCold(COOLANT_LEVEL_COLD_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_HOT:
				setCoolantLevelHot(COOLANT_LEVEL_HOT_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN:
				setCoolantLevelColdAgain(COOLANT_LEVEL_COLD_AGAIN_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__LEAKS_COLD:
				setLeaksCold(LEAKS_COLD_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__LEAKS_HOT:
				setLeaksHot(LEAKS_HOT_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER:
				setWaterAtOutletAfter(WATER_AT_OUTLET_AFTER_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__OIL_PRESSURE_AFTER:
				setOilPressureAfter(OIL_PRESSURE_AFTER_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED:
				setMufflerLevelChecked(MUFFLER_LEVEL_CHECKED_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__REMARKS:
				setRemarks(REMARKS_EDEFAULT);
				return;
			case GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN:
				setCarbonMonoxideCabin(CARBON_MONOXIDE_CABIN_EDEFAULT);
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
			case GarboardPackage.TRIAL__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case GarboardPackage.TRIAL__PLACE:
				return place != PLACE_EDEFAULT;
			case GarboardPackage.TRIAL__LOCATION:
				return LOCATION_EDEFAULT == null ? location != null : !LOCATION_EDEFAULT.equals(location);
			case GarboardPackage.TRIAL__PEOPLE:
				return PEOPLE_EDEFAULT == null ? people != null : !PEOPLE_EDEFAULT.equals(people);
			case GarboardPackage.TRIAL__SEA_TEMPERATURE:
				return SEA_TEMPERATURE_EDEFAULT == null ? seaTemperature != null : !SEA_TEMPERATURE_EDEFAULT.equals(seaTemperature);
			case GarboardPackage.TRIAL__OUTSIDE_TEMPERATURE:
				return OUTSIDE_TEMPERATURE_EDEFAULT == null ? outsideTemperature != null : !OUTSIDE_TEMPERATURE_EDEFAULT.equals(outsideTemperature);
			case GarboardPackage.TRIAL__BAROMETRIC_PRESSURE:
				return BAROMETRIC_PRESSURE_EDEFAULT == null ? barometricPressure != null : !BAROMETRIC_PRESSURE_EDEFAULT.equals(barometricPressure);
			case GarboardPackage.TRIAL__RELATIVE_HUMIDITY:
				return RELATIVE_HUMIDITY_EDEFAULT == null ? relativeHumidity != null : !RELATIVE_HUMIDITY_EDEFAULT.equals(relativeHumidity);
			case GarboardPackage.TRIAL__HEAD_OF_WATER:
				return HEAD_OF_WATER_EDEFAULT == null ? headOfWater != null : !HEAD_OF_WATER_EDEFAULT.equals(headOfWater);
			case GarboardPackage.TRIAL__PROCEDURE:
				return procedure != null && !procedure.isEmpty();
			case GarboardPackage.TRIAL__PRIMING:
				return priming != null;
			case GarboardPackage.TRIAL__ATTEMPTS:
				return attempts != null && !attempts.isEmpty();
			case GarboardPackage.TRIAL__LOAD_STEPS:
				return loadSteps != null && !loadSteps.isEmpty();
			case GarboardPackage.TRIAL__SHUTDOWN_TESTS:
				return shutdownTests != null && !shutdownTests.isEmpty();
			case GarboardPackage.TRIAL__SEA_RUN:
				return seaRun != null;
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD:
				return COOLANT_LEVEL_COLD_EDEFAULT == null ? coolantLevelCold != null : !COOLANT_LEVEL_COLD_EDEFAULT.equals(coolantLevelCold);
			case GarboardPackage.TRIAL__COOLANT_LEVEL_HOT:
				return COOLANT_LEVEL_HOT_EDEFAULT == null ? coolantLevelHot != null : !COOLANT_LEVEL_HOT_EDEFAULT.equals(coolantLevelHot);
			case GarboardPackage.TRIAL__COOLANT_LEVEL_COLD_AGAIN:
				return COOLANT_LEVEL_COLD_AGAIN_EDEFAULT == null ? coolantLevelColdAgain != null : !COOLANT_LEVEL_COLD_AGAIN_EDEFAULT.equals(coolantLevelColdAgain);
			case GarboardPackage.TRIAL__LEAKS_COLD:
				return leaksCold != LEAKS_COLD_EDEFAULT;
			case GarboardPackage.TRIAL__LEAKS_HOT:
				return leaksHot != LEAKS_HOT_EDEFAULT;
			case GarboardPackage.TRIAL__WATER_AT_OUTLET_AFTER:
				return WATER_AT_OUTLET_AFTER_EDEFAULT == null ? waterAtOutletAfter != null : !WATER_AT_OUTLET_AFTER_EDEFAULT.equals(waterAtOutletAfter);
			case GarboardPackage.TRIAL__OIL_PRESSURE_AFTER:
				return OIL_PRESSURE_AFTER_EDEFAULT == null ? oilPressureAfter != null : !OIL_PRESSURE_AFTER_EDEFAULT.equals(oilPressureAfter);
			case GarboardPackage.TRIAL__MUFFLER_LEVEL_CHECKED:
				return mufflerLevelChecked != MUFFLER_LEVEL_CHECKED_EDEFAULT;
			case GarboardPackage.TRIAL__REMARKS:
				return REMARKS_EDEFAULT == null ? remarks != null : !REMARKS_EDEFAULT.equals(remarks);
			case GarboardPackage.TRIAL__CARBON_MONOXIDE_CABIN:
				return CARBON_MONOXIDE_CABIN_EDEFAULT == null ? carbonMonoxideCabin != null : !CARBON_MONOXIDE_CABIN_EDEFAULT.equals(carbonMonoxideCabin);
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
		result.append(" (date: ");
		result.append(date);
		result.append(", place: ");
		result.append(place);
		result.append(", location: ");
		result.append(location);
		result.append(", people: ");
		result.append(people);
		result.append(", seaTemperature: ");
		result.append(seaTemperature);
		result.append(", outsideTemperature: ");
		result.append(outsideTemperature);
		result.append(", barometricPressure: ");
		result.append(barometricPressure);
		result.append(", relativeHumidity: ");
		result.append(relativeHumidity);
		result.append(", headOfWater: ");
		result.append(headOfWater);
		result.append(", coolantLevelCold: ");
		result.append(coolantLevelCold);
		result.append(", coolantLevelHot: ");
		result.append(coolantLevelHot);
		result.append(", coolantLevelColdAgain: ");
		result.append(coolantLevelColdAgain);
		result.append(", leaksCold: ");
		result.append(leaksCold);
		result.append(", leaksHot: ");
		result.append(leaksHot);
		result.append(", waterAtOutletAfter: ");
		result.append(waterAtOutletAfter);
		result.append(", oilPressureAfter: ");
		result.append(oilPressureAfter);
		result.append(", mufflerLevelChecked: ");
		result.append(mufflerLevelChecked);
		result.append(", remarks: ");
		result.append(remarks);
		result.append(", carbonMonoxideCabin: ");
		result.append(carbonMonoxideCabin);
		result.append(')');
		return result.toString();
	}

} //TrialImpl
