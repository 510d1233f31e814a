/**
 */
package garboard.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Instrument</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Instrument#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.Instrument#getSerialNumber <em>Serial Number</em>}</li>
 *   <li>{@link garboard.model.Instrument#getMeasures <em>Measures</em>}</li>
 *   <li>{@link garboard.model.Instrument#getAccuracyStated <em>Accuracy Stated</em>}</li>
 *   <li>{@link garboard.model.Instrument#getCalibratedOn <em>Calibrated On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getInstrument()
 * @generated
 */
public interface Instrument extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getInstrument_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.Instrument#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Serial Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Serial Number</em>' attribute.
	 * @see #setSerialNumber(String)
	 * @see garboard.model.GarboardPackage#getInstrument_SerialNumber()
	 * @generated
	 */
	String getSerialNumber();

	/**
	 * Sets the value of the '{@link garboard.model.Instrument#getSerialNumber <em>Serial Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Serial Number</em>' attribute.
	 * @see #getSerialNumber()
	 * @generated
	 */
	void setSerialNumber(String value);

	/**
	 * Returns the value of the '<em><b>Measures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measures</em>' attribute.
	 * @see #setMeasures(String)
	 * @see garboard.model.GarboardPackage#getInstrument_Measures()
	 * @generated
	 */
	String getMeasures();

	/**
	 * Sets the value of the '{@link garboard.model.Instrument#getMeasures <em>Measures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measures</em>' attribute.
	 * @see #getMeasures()
	 * @generated
	 */
	void setMeasures(String value);

	/**
	 * Returns the value of the '<em><b>Accuracy Stated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Accuracy Stated</em>' attribute.
	 * @see #setAccuracyStated(String)
	 * @see garboard.model.GarboardPackage#getInstrument_AccuracyStated()
	 * @generated
	 */
	String getAccuracyStated();

	/**
	 * Sets the value of the '{@link garboard.model.Instrument#getAccuracyStated <em>Accuracy Stated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accuracy Stated</em>' attribute.
	 * @see #getAccuracyStated()
	 * @generated
	 */
	void setAccuracyStated(String value);

	/**
	 * Returns the value of the '<em><b>Calibrated On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calibrated On</em>' attribute.
	 * @see #setCalibratedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getInstrument_CalibratedOn()
	 * @generated
	 */
	LocalDate getCalibratedOn();

	/**
	 * Sets the value of the '{@link garboard.model.Instrument#getCalibratedOn <em>Calibrated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calibrated On</em>' attribute.
	 * @see #getCalibratedOn()
	 * @generated
	 */
	void setCalibratedOn(LocalDate value);

} // Instrument
