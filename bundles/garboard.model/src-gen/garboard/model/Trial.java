/**
 */
package garboard.model;

import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Trial#getDate <em>Date</em>}</li>
 *   <li>{@link garboard.model.Trial#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.Trial#getLocation <em>Location</em>}</li>
 *   <li>{@link garboard.model.Trial#getPeople <em>People</em>}</li>
 *   <li>{@link garboard.model.Trial#getSeaTemperature <em>Sea Temperature</em>}</li>
 *   <li>{@link garboard.model.Trial#getOutsideTemperature <em>Outside Temperature</em>}</li>
 *   <li>{@link garboard.model.Trial#getBarometricPressure <em>Barometric Pressure</em>}</li>
 *   <li>{@link garboard.model.Trial#getRelativeHumidity <em>Relative Humidity</em>}</li>
 *   <li>{@link garboard.model.Trial#getHeadOfWater <em>Head Of Water</em>}</li>
 *   <li>{@link garboard.model.Trial#getProcedure <em>Procedure</em>}</li>
 *   <li>{@link garboard.model.Trial#getPriming <em>Priming</em>}</li>
 *   <li>{@link garboard.model.Trial#getAttempts <em>Attempts</em>}</li>
 *   <li>{@link garboard.model.Trial#getLoadSteps <em>Load Steps</em>}</li>
 *   <li>{@link garboard.model.Trial#getShutdownTests <em>Shutdown Tests</em>}</li>
 *   <li>{@link garboard.model.Trial#getSeaRun <em>Sea Run</em>}</li>
 *   <li>{@link garboard.model.Trial#getCoolantLevelCold <em>Coolant Level Cold</em>}</li>
 *   <li>{@link garboard.model.Trial#getCoolantLevelHot <em>Coolant Level Hot</em>}</li>
 *   <li>{@link garboard.model.Trial#getCoolantLevelColdAgain <em>Coolant Level Cold Again</em>}</li>
 *   <li>{@link garboard.model.Trial#getLeaksCold <em>Leaks Cold</em>}</li>
 *   <li>{@link garboard.model.Trial#getLeaksHot <em>Leaks Hot</em>}</li>
 *   <li>{@link garboard.model.Trial#getWaterAtOutletAfter <em>Water At Outlet After</em>}</li>
 *   <li>{@link garboard.model.Trial#getOilPressureAfter <em>Oil Pressure After</em>}</li>
 *   <li>{@link garboard.model.Trial#getMufflerLevelChecked <em>Muffler Level Checked</em>}</li>
 *   <li>{@link garboard.model.Trial#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link garboard.model.Trial#getCarbonMonoxideCabin <em>Carbon Monoxide Cabin</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getTrial()
 * @generated
 */
public interface Trial extends EObject {
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see garboard.model.GarboardPackage#getTrial_Date()
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TrialPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see garboard.model.TrialPlace
	 * @see #setPlace(TrialPlace)
	 * @see garboard.model.GarboardPackage#getTrial_Place()
	 * @generated
	 */
	TrialPlace getPlace();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see garboard.model.TrialPlace
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(TrialPlace value);

	/**
	 * Returns the value of the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Location</em>' attribute.
	 * @see #setLocation(String)
	 * @see garboard.model.GarboardPackage#getTrial_Location()
	 * @generated
	 */
	String getLocation();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getLocation <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Location</em>' attribute.
	 * @see #getLocation()
	 * @generated
	 */
	void setLocation(String value);

	/**
	 * Returns the value of the '<em><b>People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>People</em>' attribute.
	 * @see #setPeople(String)
	 * @see garboard.model.GarboardPackage#getTrial_People()
	 * @generated
	 */
	String getPeople();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getPeople <em>People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>People</em>' attribute.
	 * @see #getPeople()
	 * @generated
	 */
	void setPeople(String value);

	/**
	 * Returns the value of the '<em><b>Sea Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sea Temperature</em>' attribute.
	 * @see #setSeaTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getTrial_SeaTemperature()
	 * @generated
	 */
	Temperature getSeaTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getSeaTemperature <em>Sea Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sea Temperature</em>' attribute.
	 * @see #getSeaTemperature()
	 * @generated
	 */
	void setSeaTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Outside Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outside Temperature</em>' attribute.
	 * @see #setOutsideTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getTrial_OutsideTemperature()
	 * @generated
	 */
	Temperature getOutsideTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getOutsideTemperature <em>Outside Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outside Temperature</em>' attribute.
	 * @see #getOutsideTemperature()
	 * @generated
	 */
	void setOutsideTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Barometric Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Barometric Pressure</em>' attribute.
	 * @see #setBarometricPressure(AbsolutePressure)
	 * @see garboard.model.GarboardPackage#getTrial_BarometricPressure()
	 * @generated
	 */
	AbsolutePressure getBarometricPressure();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getBarometricPressure <em>Barometric Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Barometric Pressure</em>' attribute.
	 * @see #getBarometricPressure()
	 * @generated
	 */
	void setBarometricPressure(AbsolutePressure value);

	/**
	 * Returns the value of the '<em><b>Relative Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Relative Humidity</em>' attribute.
	 * @see #setRelativeHumidity(Ratio)
	 * @see garboard.model.GarboardPackage#getTrial_RelativeHumidity()
	 * @generated
	 */
	Ratio getRelativeHumidity();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getRelativeHumidity <em>Relative Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Relative Humidity</em>' attribute.
	 * @see #getRelativeHumidity()
	 * @generated
	 */
	void setRelativeHumidity(Ratio value);

	/**
	 * Returns the value of the '<em><b>Head Of Water</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Head Of Water</em>' attribute.
	 * @see #setHeadOfWater(Length)
	 * @see garboard.model.GarboardPackage#getTrial_HeadOfWater()
	 * @generated
	 */
	Length getHeadOfWater();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getHeadOfWater <em>Head Of Water</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Of Water</em>' attribute.
	 * @see #getHeadOfWater()
	 * @generated
	 */
	void setHeadOfWater(Length value);

	/**
	 * Returns the value of the '<em><b>Procedure</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.ProcedureStep}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Procedure</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getTrial_Procedure()
	 * @generated
	 */
	EList<ProcedureStep> getProcedure();

	/**
	 * Returns the value of the '<em><b>Priming</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Priming</em>' containment reference.
	 * @see #setPriming(FuelPriming)
	 * @see garboard.model.GarboardPackage#getTrial_Priming()
	 * @generated
	 */
	FuelPriming getPriming();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getPriming <em>Priming</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Priming</em>' containment reference.
	 * @see #getPriming()
	 * @generated
	 */
	void setPriming(FuelPriming value);

	/**
	 * Returns the value of the '<em><b>Attempts</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.CrankingAttempt}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Attempts</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getTrial_Attempts()
	 * @generated
	 */
	EList<CrankingAttempt> getAttempts();

	/**
	 * Returns the value of the '<em><b>Load Steps</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.LoadStep}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Load Steps</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getTrial_LoadSteps()
	 * @generated
	 */
	EList<LoadStep> getLoadSteps();

	/**
	 * Returns the value of the '<em><b>Shutdown Tests</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.AlarmDevice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shutdown Tests</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getTrial_ShutdownTests()
	 * @generated
	 */
	EList<AlarmDevice> getShutdownTests();

	/**
	 * Returns the value of the '<em><b>Sea Run</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sea Run</em>' containment reference.
	 * @see #setSeaRun(SeaRun)
	 * @see garboard.model.GarboardPackage#getTrial_SeaRun()
	 * @generated
	 */
	SeaRun getSeaRun();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getSeaRun <em>Sea Run</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sea Run</em>' containment reference.
	 * @see #getSeaRun()
	 * @generated
	 */
	void setSeaRun(SeaRun value);

	/**
	 * Returns the value of the '<em><b>Coolant Level Cold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coolant Level Cold</em>' attribute.
	 * @see #setCoolantLevelCold(String)
	 * @see garboard.model.GarboardPackage#getTrial_CoolantLevelCold()
	 * @generated
	 */
	String getCoolantLevelCold();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getCoolantLevelCold <em>Coolant Level Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coolant Level Cold</em>' attribute.
	 * @see #getCoolantLevelCold()
	 * @generated
	 */
	void setCoolantLevelCold(String value);

	/**
	 * Returns the value of the '<em><b>Coolant Level Hot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coolant Level Hot</em>' attribute.
	 * @see #setCoolantLevelHot(String)
	 * @see garboard.model.GarboardPackage#getTrial_CoolantLevelHot()
	 * @generated
	 */
	String getCoolantLevelHot();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getCoolantLevelHot <em>Coolant Level Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coolant Level Hot</em>' attribute.
	 * @see #getCoolantLevelHot()
	 * @generated
	 */
	void setCoolantLevelHot(String value);

	/**
	 * Returns the value of the '<em><b>Coolant Level Cold Again</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coolant Level Cold Again</em>' attribute.
	 * @see #setCoolantLevelColdAgain(String)
	 * @see garboard.model.GarboardPackage#getTrial_CoolantLevelColdAgain()
	 * @generated
	 */
	String getCoolantLevelColdAgain();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getCoolantLevelColdAgain <em>Coolant Level Cold Again</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coolant Level Cold Again</em>' attribute.
	 * @see #getCoolantLevelColdAgain()
	 * @generated
	 */
	void setCoolantLevelColdAgain(String value);

	/**
	 * Returns the value of the '<em><b>Leaks Cold</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leaks Cold</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLeaksCold(Answer)
	 * @see garboard.model.GarboardPackage#getTrial_LeaksCold()
	 * @generated
	 */
	Answer getLeaksCold();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getLeaksCold <em>Leaks Cold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leaks Cold</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLeaksCold()
	 * @generated
	 */
	void setLeaksCold(Answer value);

	/**
	 * Returns the value of the '<em><b>Leaks Hot</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leaks Hot</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLeaksHot(Answer)
	 * @see garboard.model.GarboardPackage#getTrial_LeaksHot()
	 * @generated
	 */
	Answer getLeaksHot();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getLeaksHot <em>Leaks Hot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leaks Hot</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLeaksHot()
	 * @generated
	 */
	void setLeaksHot(Answer value);

	/**
	 * Returns the value of the '<em><b>Water At Outlet After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water At Outlet After</em>' attribute.
	 * @see #setWaterAtOutletAfter(TimeSpan)
	 * @see garboard.model.GarboardPackage#getTrial_WaterAtOutletAfter()
	 * @generated
	 */
	TimeSpan getWaterAtOutletAfter();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getWaterAtOutletAfter <em>Water At Outlet After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water At Outlet After</em>' attribute.
	 * @see #getWaterAtOutletAfter()
	 * @generated
	 */
	void setWaterAtOutletAfter(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Oil Pressure After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Oil Pressure After</em>' attribute.
	 * @see #setOilPressureAfter(TimeSpan)
	 * @see garboard.model.GarboardPackage#getTrial_OilPressureAfter()
	 * @generated
	 */
	TimeSpan getOilPressureAfter();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getOilPressureAfter <em>Oil Pressure After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Oil Pressure After</em>' attribute.
	 * @see #getOilPressureAfter()
	 * @generated
	 */
	void setOilPressureAfter(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Muffler Level Checked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Muffler Level Checked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setMufflerLevelChecked(Answer)
	 * @see garboard.model.GarboardPackage#getTrial_MufflerLevelChecked()
	 * @generated
	 */
	Answer getMufflerLevelChecked();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getMufflerLevelChecked <em>Muffler Level Checked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Muffler Level Checked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getMufflerLevelChecked()
	 * @generated
	 */
	void setMufflerLevelChecked(Answer value);

	/**
	 * Returns the value of the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remarks</em>' attribute.
	 * @see #setRemarks(String)
	 * @see garboard.model.GarboardPackage#getTrial_Remarks()
	 * @generated
	 */
	String getRemarks();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getRemarks <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remarks</em>' attribute.
	 * @see #getRemarks()
	 * @generated
	 */
	void setRemarks(String value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide Cabin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide Cabin</em>' attribute.
	 * @see #setCarbonMonoxideCabin(Ratio)
	 * @see garboard.model.GarboardPackage#getTrial_CarbonMonoxideCabin()
	 * @generated
	 */
	Ratio getCarbonMonoxideCabin();

	/**
	 * Sets the value of the '{@link garboard.model.Trial#getCarbonMonoxideCabin <em>Carbon Monoxide Cabin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide Cabin</em>' attribute.
	 * @see #getCarbonMonoxideCabin()
	 * @generated
	 */
	void setCarbonMonoxideCabin(Ratio value);

} // Trial
