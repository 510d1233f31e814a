/**
 */
package garboard.model;

import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Load Step</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.LoadStep#getLoad <em>Load</em>}</li>
 *   <li>{@link garboard.model.LoadStep#getDwell <em>Dwell</em>}</li>
 *   <li>{@link garboard.model.LoadStep#getReadings <em>Readings</em>}</li>
 *   <li>{@link garboard.model.LoadStep#getRemarks <em>Remarks</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getLoadStep()
 * @generated
 */
public interface LoadStep extends Item {
	/**
	 * Returns the value of the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Load</em>' attribute.
	 * @see #setLoad(Ratio)
	 * @see garboard.model.GarboardPackage#getLoadStep_Load()
	 * @generated
	 */
	Ratio getLoad();

	/**
	 * Sets the value of the '{@link garboard.model.LoadStep#getLoad <em>Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Load</em>' attribute.
	 * @see #getLoad()
	 * @generated
	 */
	void setLoad(Ratio value);

	/**
	 * Returns the value of the '<em><b>Dwell</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dwell</em>' attribute.
	 * @see #setDwell(TimeSpan)
	 * @see garboard.model.GarboardPackage#getLoadStep_Dwell()
	 * @generated
	 */
	TimeSpan getDwell();

	/**
	 * Sets the value of the '{@link garboard.model.LoadStep#getDwell <em>Dwell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dwell</em>' attribute.
	 * @see #getDwell()
	 * @generated
	 */
	void setDwell(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Readings</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Readings</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getLoadStep_Readings()
	 * @generated
	 */
	EList<Reading> getReadings();

	/**
	 * Returns the value of the '<em><b>Remarks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remarks</em>' attribute.
	 * @see #setRemarks(String)
	 * @see garboard.model.GarboardPackage#getLoadStep_Remarks()
	 * @generated
	 */
	String getRemarks();

	/**
	 * Sets the value of the '{@link garboard.model.LoadStep#getRemarks <em>Remarks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remarks</em>' attribute.
	 * @see #getRemarks()
	 * @generated
	 */
	void setRemarks(String value);

} // LoadStep
