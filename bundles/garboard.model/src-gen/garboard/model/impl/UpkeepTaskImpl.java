/**
 */
package garboard.model.impl;

import garboard.model.GarboardPackage;
import garboard.model.UpkeepTask;

import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Upkeep Task</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getTask <em>Task</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getEveryHours <em>Every Hours</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getEveryMonths <em>Every Months</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getLastDoneOn <em>Last Done On</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getLastDoneHours <em>Last Done Hours</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepTaskImpl#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UpkeepTaskImpl extends ItemImpl implements UpkeepTask {
	/**
	 * The default value of the '{@link #getTask() <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTask()
	 * @generated
	 * @ordered
	 */
	protected static final String TASK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTask() <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTask()
	 * @generated
	 * @ordered
	 */
	protected String task = TASK_EDEFAULT;

	/**
	 * The default value of the '{@link #getEveryHours() <em>Every Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEveryHours()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan EVERY_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEveryHours() <em>Every Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEveryHours()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan everyHours = EVERY_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getEveryMonths() <em>Every Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEveryMonths()
	 * @generated
	 * @ordered
	 */
	protected static final Integer EVERY_MONTHS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEveryMonths() <em>Every Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEveryMonths()
	 * @generated
	 * @ordered
	 */
	protected Integer everyMonths = EVERY_MONTHS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLastDoneOn() <em>Last Done On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDoneOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate LAST_DONE_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLastDoneOn() <em>Last Done On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDoneOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate lastDoneOn = LAST_DONE_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getLastDoneHours() <em>Last Done Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDoneHours()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan LAST_DONE_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLastDoneHours() <em>Last Done Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDoneHours()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan lastDoneHours = LAST_DONE_HOURS_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UpkeepTaskImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.UPKEEP_TASK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTask() {
		return task;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTask(String newTask) {
		String oldTask = task;
		task = newTask;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__TASK, oldTask, task));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getEveryHours() {
		return everyHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEveryHours(TimeSpan newEveryHours) {
		TimeSpan oldEveryHours = everyHours;
		everyHours = newEveryHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__EVERY_HOURS, oldEveryHours, everyHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getEveryMonths() {
		return everyMonths;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEveryMonths(Integer newEveryMonths) {
		Integer oldEveryMonths = everyMonths;
		everyMonths = newEveryMonths;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__EVERY_MONTHS, oldEveryMonths, everyMonths));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastDoneOn() {
		return lastDoneOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastDoneOn(LocalDate newLastDoneOn) {
		LocalDate oldLastDoneOn = lastDoneOn;
		lastDoneOn = newLastDoneOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__LAST_DONE_ON, oldLastDoneOn, lastDoneOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getLastDoneHours() {
		return lastDoneHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastDoneHours(TimeSpan newLastDoneHours) {
		TimeSpan oldLastDoneHours = lastDoneHours;
		lastDoneHours = newLastDoneHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__LAST_DONE_HOURS, oldLastDoneHours, lastDoneHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP_TASK__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.UPKEEP_TASK__TASK:
				return getTask();
			case GarboardPackage.UPKEEP_TASK__EVERY_HOURS:
				return getEveryHours();
			case GarboardPackage.UPKEEP_TASK__EVERY_MONTHS:
				return getEveryMonths();
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_ON:
				return getLastDoneOn();
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_HOURS:
				return getLastDoneHours();
			case GarboardPackage.UPKEEP_TASK__NOTE:
				return getNote();
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
			case GarboardPackage.UPKEEP_TASK__TASK:
				setTask((String)newValue);
				return;
			case GarboardPackage.UPKEEP_TASK__EVERY_HOURS:
				setEveryHours((TimeSpan)newValue);
				return;
			case GarboardPackage.UPKEEP_TASK__EVERY_MONTHS:
				setEveryMonths((Integer)newValue);
				return;
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_ON:
				setLastDoneOn((LocalDate)newValue);
				return;
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_HOURS:
				setLastDoneHours((TimeSpan)newValue);
				return;
			case GarboardPackage.UPKEEP_TASK__NOTE:
				setNote((String)newValue);
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
			case GarboardPackage.UPKEEP_TASK__TASK:
				setTask(TASK_EDEFAULT);
				return;
			case GarboardPackage.UPKEEP_TASK__EVERY_HOURS:
				setEveryHours(EVERY_HOURS_EDEFAULT);
				return;
			case GarboardPackage.UPKEEP_TASK__EVERY_MONTHS:
				setEveryMonths(EVERY_MONTHS_EDEFAULT);
				return;
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_ON:
				setLastDoneOn(LAST_DONE_ON_EDEFAULT);
				return;
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_HOURS:
				setLastDoneHours(LAST_DONE_HOURS_EDEFAULT);
				return;
			case GarboardPackage.UPKEEP_TASK__NOTE:
				setNote(NOTE_EDEFAULT);
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
			case GarboardPackage.UPKEEP_TASK__TASK:
				return TASK_EDEFAULT == null ? task != null : !TASK_EDEFAULT.equals(task);
			case GarboardPackage.UPKEEP_TASK__EVERY_HOURS:
				return EVERY_HOURS_EDEFAULT == null ? everyHours != null : !EVERY_HOURS_EDEFAULT.equals(everyHours);
			case GarboardPackage.UPKEEP_TASK__EVERY_MONTHS:
				return EVERY_MONTHS_EDEFAULT == null ? everyMonths != null : !EVERY_MONTHS_EDEFAULT.equals(everyMonths);
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_ON:
				return LAST_DONE_ON_EDEFAULT == null ? lastDoneOn != null : !LAST_DONE_ON_EDEFAULT.equals(lastDoneOn);
			case GarboardPackage.UPKEEP_TASK__LAST_DONE_HOURS:
				return LAST_DONE_HOURS_EDEFAULT == null ? lastDoneHours != null : !LAST_DONE_HOURS_EDEFAULT.equals(lastDoneHours);
			case GarboardPackage.UPKEEP_TASK__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
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
		result.append(" (task: ");
		result.append(task);
		result.append(", everyHours: ");
		result.append(everyHours);
		result.append(", everyMonths: ");
		result.append(everyMonths);
		result.append(", lastDoneOn: ");
		result.append(lastDoneOn);
		result.append(", lastDoneHours: ");
		result.append(lastDoneHours);
		result.append(", note: ");
		result.append(note);
		result.append(')');
		return result.toString();
	}

} //UpkeepTaskImpl
