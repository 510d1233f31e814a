/**
 */
package garboard.model;

import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Battery Block</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.BatteryBlock#getLabel <em>Label</em>}</li>
 *   <li>{@link garboard.model.BatteryBlock#getRestedVoltage <em>Rested Voltage</em>}</li>
 *   <li>{@link garboard.model.BatteryBlock#getSpecificGravityLow <em>Specific Gravity Low</em>}</li>
 *   <li>{@link garboard.model.BatteryBlock#getSpecificGravityHigh <em>Specific Gravity High</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getBatteryBlock()
 * @generated
 */
public interface BatteryBlock extends Item {
	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see garboard.model.GarboardPackage#getBatteryBlock_Label()
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link garboard.model.BatteryBlock#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

	/**
	 * Returns the value of the '<em><b>Rested Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rested Voltage</em>' attribute.
	 * @see #setRestedVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getBatteryBlock_RestedVoltage()
	 * @generated
	 */
	Voltage getRestedVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.BatteryBlock#getRestedVoltage <em>Rested Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rested Voltage</em>' attribute.
	 * @see #getRestedVoltage()
	 * @generated
	 */
	void setRestedVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Specific Gravity Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specific Gravity Low</em>' attribute.
	 * @see #setSpecificGravityLow(Ratio)
	 * @see garboard.model.GarboardPackage#getBatteryBlock_SpecificGravityLow()
	 * @generated
	 */
	Ratio getSpecificGravityLow();

	/**
	 * Sets the value of the '{@link garboard.model.BatteryBlock#getSpecificGravityLow <em>Specific Gravity Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specific Gravity Low</em>' attribute.
	 * @see #getSpecificGravityLow()
	 * @generated
	 */
	void setSpecificGravityLow(Ratio value);

	/**
	 * Returns the value of the '<em><b>Specific Gravity High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specific Gravity High</em>' attribute.
	 * @see #setSpecificGravityHigh(Ratio)
	 * @see garboard.model.GarboardPackage#getBatteryBlock_SpecificGravityHigh()
	 * @generated
	 */
	Ratio getSpecificGravityHigh();

	/**
	 * Sets the value of the '{@link garboard.model.BatteryBlock#getSpecificGravityHigh <em>Specific Gravity High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specific Gravity High</em>' attribute.
	 * @see #getSpecificGravityHigh()
	 * @generated
	 */
	void setSpecificGravityHigh(Ratio value);

} // BatteryBlock
