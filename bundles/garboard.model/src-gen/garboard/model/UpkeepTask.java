/**
 */
package garboard.model;

import garboard.quantity.TimeSpan;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Upkeep Task</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.UpkeepTask#getTask <em>Task</em>}</li>
 *   <li>{@link garboard.model.UpkeepTask#getEveryHours <em>Every Hours</em>}</li>
 *   <li>{@link garboard.model.UpkeepTask#getEveryMonths <em>Every Months</em>}</li>
 *   <li>{@link garboard.model.UpkeepTask#getLastDoneOn <em>Last Done On</em>}</li>
 *   <li>{@link garboard.model.UpkeepTask#getLastDoneHours <em>Last Done Hours</em>}</li>
 *   <li>{@link garboard.model.UpkeepTask#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getUpkeepTask()
 * @generated
 */
public interface UpkeepTask extends Item {
	/**
	 * Returns the value of the '<em><b>Task</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Task</em>' attribute.
	 * @see #setTask(String)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_Task()
	 * @generated
	 */
	String getTask();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getTask <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Task</em>' attribute.
	 * @see #getTask()
	 * @generated
	 */
	void setTask(String value);

	/**
	 * Returns the value of the '<em><b>Every Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Every Hours</em>' attribute.
	 * @see #setEveryHours(TimeSpan)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_EveryHours()
	 * @generated
	 */
	TimeSpan getEveryHours();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getEveryHours <em>Every Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Every Hours</em>' attribute.
	 * @see #getEveryHours()
	 * @generated
	 */
	void setEveryHours(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Every Months</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Every Months</em>' attribute.
	 * @see #setEveryMonths(Integer)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_EveryMonths()
	 * @generated
	 */
	Integer getEveryMonths();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getEveryMonths <em>Every Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Every Months</em>' attribute.
	 * @see #getEveryMonths()
	 * @generated
	 */
	void setEveryMonths(Integer value);

	/**
	 * Returns the value of the '<em><b>Last Done On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Last Done On</em>' attribute.
	 * @see #setLastDoneOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_LastDoneOn()
	 * @generated
	 */
	LocalDate getLastDoneOn();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getLastDoneOn <em>Last Done On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Done On</em>' attribute.
	 * @see #getLastDoneOn()
	 * @generated
	 */
	void setLastDoneOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Last Done Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Last Done Hours</em>' attribute.
	 * @see #setLastDoneHours(TimeSpan)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_LastDoneHours()
	 * @generated
	 */
	TimeSpan getLastDoneHours();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getLastDoneHours <em>Last Done Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Done Hours</em>' attribute.
	 * @see #getLastDoneHours()
	 * @generated
	 */
	void setLastDoneHours(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see garboard.model.GarboardPackage#getUpkeepTask_Note()
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link garboard.model.UpkeepTask#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // UpkeepTask
