/**
 */
package garboard.model;

import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Alarms And Safety</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.AlarmsAndSafety#getAlarms <em>Alarms</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideInEverySpace <em>Carbon Monoxide In Every Space</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideMarked <em>Carbon Monoxide Marked</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideExpiry <em>Carbon Monoxide Expiry</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlwaysPowered <em>Carbon Monoxide Always Powered</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getHabitableSpaces <em>Habitable Spaces</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlarms <em>Carbon Monoxide Alarms</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getVapourDetector <em>Vapour Detector</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getVapourSensorLow <em>Vapour Sensor Low</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getVapourBeforeStart <em>Vapour Before Start</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getFireExtinguisher <em>Fire Extinguisher</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getFixedFireSystem <em>Fixed Fire System</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getFireSystemStopsSet <em>Fire System Stops Set</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getFireDischargePort <em>Fire Discharge Port</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getRemoteStop <em>Remote Stop</em>}</li>
 *   <li>{@link garboard.model.AlarmsAndSafety#getWarningLabels <em>Warning Labels</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getAlarmsAndSafety()
 * @generated
 */
public interface AlarmsAndSafety extends EObject {
	/**
	 * Returns the value of the '<em><b>Alarms</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.AlarmDevice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Alarms</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_Alarms()
	 * @generated
	 */
	EList<AlarmDevice> getAlarms();

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide In Every Space</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide In Every Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCarbonMonoxideInEverySpace(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_CarbonMonoxideInEverySpace()
	 * @generated
	 */
	Answer getCarbonMonoxideInEverySpace();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideInEverySpace <em>Carbon Monoxide In Every Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide In Every Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCarbonMonoxideInEverySpace()
	 * @generated
	 */
	void setCarbonMonoxideInEverySpace(Answer value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide Marked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCarbonMonoxideMarked(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_CarbonMonoxideMarked()
	 * @generated
	 */
	Answer getCarbonMonoxideMarked();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideMarked <em>Carbon Monoxide Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCarbonMonoxideMarked()
	 * @generated
	 */
	void setCarbonMonoxideMarked(Answer value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide Expiry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide Expiry</em>' attribute.
	 * @see #setCarbonMonoxideExpiry(LocalDate)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_CarbonMonoxideExpiry()
	 * @generated
	 */
	LocalDate getCarbonMonoxideExpiry();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideExpiry <em>Carbon Monoxide Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide Expiry</em>' attribute.
	 * @see #getCarbonMonoxideExpiry()
	 * @generated
	 */
	void setCarbonMonoxideExpiry(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide Always Powered</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide Always Powered</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCarbonMonoxideAlwaysPowered(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_CarbonMonoxideAlwaysPowered()
	 * @generated
	 */
	Answer getCarbonMonoxideAlwaysPowered();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlwaysPowered <em>Carbon Monoxide Always Powered</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide Always Powered</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCarbonMonoxideAlwaysPowered()
	 * @generated
	 */
	void setCarbonMonoxideAlwaysPowered(Answer value);

	/**
	 * Returns the value of the '<em><b>Habitable Spaces</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Habitable Spaces</em>' attribute.
	 * @see #setHabitableSpaces(Integer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_HabitableSpaces()
	 * @generated
	 */
	Integer getHabitableSpaces();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getHabitableSpaces <em>Habitable Spaces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Habitable Spaces</em>' attribute.
	 * @see #getHabitableSpaces()
	 * @generated
	 */
	void setHabitableSpaces(Integer value);

	/**
	 * Returns the value of the '<em><b>Carbon Monoxide Alarms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carbon Monoxide Alarms</em>' attribute.
	 * @see #setCarbonMonoxideAlarms(Integer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_CarbonMonoxideAlarms()
	 * @generated
	 */
	Integer getCarbonMonoxideAlarms();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getCarbonMonoxideAlarms <em>Carbon Monoxide Alarms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carbon Monoxide Alarms</em>' attribute.
	 * @see #getCarbonMonoxideAlarms()
	 * @generated
	 */
	void setCarbonMonoxideAlarms(Integer value);

	/**
	 * Returns the value of the '<em><b>Vapour Detector</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vapour Detector</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVapourDetector(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_VapourDetector()
	 * @generated
	 */
	Answer getVapourDetector();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getVapourDetector <em>Vapour Detector</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vapour Detector</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVapourDetector()
	 * @generated
	 */
	void setVapourDetector(Answer value);

	/**
	 * Returns the value of the '<em><b>Vapour Sensor Low</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vapour Sensor Low</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVapourSensorLow(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_VapourSensorLow()
	 * @generated
	 */
	Answer getVapourSensorLow();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getVapourSensorLow <em>Vapour Sensor Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vapour Sensor Low</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVapourSensorLow()
	 * @generated
	 */
	void setVapourSensorLow(Answer value);

	/**
	 * Returns the value of the '<em><b>Vapour Before Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vapour Before Start</em>' attribute.
	 * @see #setVapourBeforeStart(TimeSpan)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_VapourBeforeStart()
	 * @generated
	 */
	TimeSpan getVapourBeforeStart();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getVapourBeforeStart <em>Vapour Before Start</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vapour Before Start</em>' attribute.
	 * @see #getVapourBeforeStart()
	 * @generated
	 */
	void setVapourBeforeStart(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Fire Extinguisher</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fire Extinguisher</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFireExtinguisher(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_FireExtinguisher()
	 * @generated
	 */
	Answer getFireExtinguisher();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getFireExtinguisher <em>Fire Extinguisher</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fire Extinguisher</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFireExtinguisher()
	 * @generated
	 */
	void setFireExtinguisher(Answer value);

	/**
	 * Returns the value of the '<em><b>Fixed Fire System</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fixed Fire System</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFixedFireSystem(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_FixedFireSystem()
	 * @generated
	 */
	Answer getFixedFireSystem();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getFixedFireSystem <em>Fixed Fire System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fixed Fire System</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFixedFireSystem()
	 * @generated
	 */
	void setFixedFireSystem(Answer value);

	/**
	 * Returns the value of the '<em><b>Fire System Stops Set</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fire System Stops Set</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFireSystemStopsSet(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_FireSystemStopsSet()
	 * @generated
	 */
	Answer getFireSystemStopsSet();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getFireSystemStopsSet <em>Fire System Stops Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fire System Stops Set</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFireSystemStopsSet()
	 * @generated
	 */
	void setFireSystemStopsSet(Answer value);

	/**
	 * Returns the value of the '<em><b>Fire Discharge Port</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fire Discharge Port</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFireDischargePort(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_FireDischargePort()
	 * @generated
	 */
	Answer getFireDischargePort();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getFireDischargePort <em>Fire Discharge Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fire Discharge Port</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFireDischargePort()
	 * @generated
	 */
	void setFireDischargePort(Answer value);

	/**
	 * Returns the value of the '<em><b>Remote Stop</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remote Stop</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setRemoteStop(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_RemoteStop()
	 * @generated
	 */
	Answer getRemoteStop();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getRemoteStop <em>Remote Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remote Stop</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getRemoteStop()
	 * @generated
	 */
	void setRemoteStop(Answer value);

	/**
	 * Returns the value of the '<em><b>Warning Labels</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Warning Labels</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWarningLabels(Answer)
	 * @see garboard.model.GarboardPackage#getAlarmsAndSafety_WarningLabels()
	 * @generated
	 */
	Answer getWarningLabels();

	/**
	 * Sets the value of the '{@link garboard.model.AlarmsAndSafety#getWarningLabels <em>Warning Labels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Warning Labels</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWarningLabels()
	 * @generated
	 */
	void setWarningLabels(Answer value);

} // AlarmsAndSafety
