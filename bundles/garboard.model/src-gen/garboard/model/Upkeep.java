/**
 */
package garboard.model;

import garboard.quantity.TimeSpan;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Upkeep</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Upkeep#getTasks <em>Tasks</em>}</li>
 *   <li>{@link garboard.model.Upkeep#getConsumables <em>Consumables</em>}</li>
 *   <li>{@link garboard.model.Upkeep#getAnnualHours <em>Annual Hours</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getUpkeep()
 * @generated
 */
public interface Upkeep extends EObject {
	/**
	 * Returns the value of the '<em><b>Tasks</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.UpkeepTask}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tasks</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getUpkeep_Tasks()
	 * @generated
	 */
	EList<UpkeepTask> getTasks();

	/**
	 * Returns the value of the '<em><b>Consumables</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Consumable}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Consumables</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getUpkeep_Consumables()
	 * @generated
	 */
	EList<Consumable> getConsumables();

	/**
	 * Returns the value of the '<em><b>Annual Hours</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Annual Hours</em>' attribute.
	 * @see #setAnnualHours(TimeSpan)
	 * @see garboard.model.GarboardPackage#getUpkeep_AnnualHours()
	 * @generated
	 */
	TimeSpan getAnnualHours();

	/**
	 * Sets the value of the '{@link garboard.model.Upkeep#getAnnualHours <em>Annual Hours</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Annual Hours</em>' attribute.
	 * @see #getAnnualHours()
	 * @generated
	 */
	void setAnnualHours(TimeSpan value);

} // Upkeep
