/**
 */
package garboard.model.impl;

import garboard.model.Consumable;
import garboard.model.GarboardPackage;
import garboard.model.Upkeep;
import garboard.model.UpkeepTask;

import garboard.quantity.TimeSpan;

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
 * An implementation of the model object '<em><b>Upkeep</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.UpkeepImpl#getTasks <em>Tasks</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepImpl#getConsumables <em>Consumables</em>}</li>
 *   <li>{@link garboard.model.impl.UpkeepImpl#getAnnualHours <em>Annual Hours</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UpkeepImpl extends MinimalEObjectImpl.Container implements Upkeep {
	/**
	 * The cached value of the '{@link #getTasks() <em>Tasks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTasks()
	 * @generated
	 * @ordered
	 */
	protected EList<UpkeepTask> tasks;

	/**
	 * The cached value of the '{@link #getConsumables() <em>Consumables</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConsumables()
	 * @generated
	 * @ordered
	 */
	protected EList<Consumable> consumables;

	/**
	 * The default value of the '{@link #getAnnualHours() <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualHours()
	 * @generated
	 * @ordered
	 */
	protected static final TimeSpan ANNUAL_HOURS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnnualHours() <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnnualHours()
	 * @generated
	 * @ordered
	 */
	protected TimeSpan annualHours = ANNUAL_HOURS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UpkeepImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.UPKEEP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<UpkeepTask> getTasks() {
		if (tasks == null) {
			tasks = new EObjectContainmentEList<UpkeepTask>(UpkeepTask.class, this, GarboardPackage.UPKEEP__TASKS);
		}
		return tasks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Consumable> getConsumables() {
		if (consumables == null) {
			consumables = new EObjectContainmentEList<Consumable>(Consumable.class, this, GarboardPackage.UPKEEP__CONSUMABLES);
		}
		return consumables;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TimeSpan getAnnualHours() {
		return annualHours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnnualHours(TimeSpan newAnnualHours) {
		TimeSpan oldAnnualHours = annualHours;
		annualHours = newAnnualHours;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.UPKEEP__ANNUAL_HOURS, oldAnnualHours, annualHours));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.UPKEEP__TASKS:
				return ((InternalEList<?>)getTasks()).basicRemove(otherEnd, msgs);
			case GarboardPackage.UPKEEP__CONSUMABLES:
				return ((InternalEList<?>)getConsumables()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.UPKEEP__TASKS:
				return getTasks();
			case GarboardPackage.UPKEEP__CONSUMABLES:
				return getConsumables();
			case GarboardPackage.UPKEEP__ANNUAL_HOURS:
				return getAnnualHours();
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
			case GarboardPackage.UPKEEP__TASKS:
				getTasks().clear();
				getTasks().addAll((Collection<? extends UpkeepTask>)newValue);
				return;
			case GarboardPackage.UPKEEP__CONSUMABLES:
				getConsumables().clear();
				getConsumables().addAll((Collection<? extends Consumable>)newValue);
				return;
			case GarboardPackage.UPKEEP__ANNUAL_HOURS:
				setAnnualHours((TimeSpan)newValue);
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
			case GarboardPackage.UPKEEP__TASKS:
				getTasks().clear();
				return;
			case GarboardPackage.UPKEEP__CONSUMABLES:
				getConsumables().clear();
				return;
			case GarboardPackage.UPKEEP__ANNUAL_HOURS:
				setAnnualHours(ANNUAL_HOURS_EDEFAULT);
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
			case GarboardPackage.UPKEEP__TASKS:
				return tasks != null && !tasks.isEmpty();
			case GarboardPackage.UPKEEP__CONSUMABLES:
				return consumables != null && !consumables.isEmpty();
			case GarboardPackage.UPKEEP__ANNUAL_HOURS:
				return ANNUAL_HOURS_EDEFAULT == null ? annualHours != null : !ANNUAL_HOURS_EDEFAULT.equals(annualHours);
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
		result.append(" (annualHours: ");
		result.append(annualHours);
		result.append(')');
		return result.toString();
	}

} //UpkeepImpl
