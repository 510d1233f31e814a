/**
 */
package garboard.model;

import garboard.quantity.Current;
import garboard.quantity.Voltage;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Transfer Switch</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.TransferSwitch#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.TransferSwitch#getPoles <em>Poles</em>}</li>
 *   <li>{@link garboard.model.TransferSwitch#getInterlocked <em>Interlocked</em>}</li>
 *   <li>{@link garboard.model.TransferSwitch#getBackFeedVoltage <em>Back Feed Voltage</em>}</li>
 *   <li>{@link garboard.model.TransferSwitch#getTested <em>Tested</em>}</li>
 *   <li>{@link garboard.model.TransferSwitch#getRatedCurrent <em>Rated Current</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getTransferSwitch()
 * @generated
 */
public interface TransferSwitch extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TransferKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.TransferKind
	 * @see #setKind(TransferKind)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_Kind()
	 * @generated
	 */
	TransferKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.TransferKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(TransferKind value);

	/**
	 * Returns the value of the '<em><b>Poles</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.PolesSwitched}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Poles</em>' attribute.
	 * @see garboard.model.PolesSwitched
	 * @see #setPoles(PolesSwitched)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_Poles()
	 * @generated
	 */
	PolesSwitched getPoles();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getPoles <em>Poles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Poles</em>' attribute.
	 * @see garboard.model.PolesSwitched
	 * @see #getPoles()
	 * @generated
	 */
	void setPoles(PolesSwitched value);

	/**
	 * Returns the value of the '<em><b>Interlocked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Interlocked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInterlocked(Answer)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_Interlocked()
	 * @generated
	 */
	Answer getInterlocked();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getInterlocked <em>Interlocked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Interlocked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInterlocked()
	 * @generated
	 */
	void setInterlocked(Answer value);

	/**
	 * Returns the value of the '<em><b>Back Feed Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Back Feed Voltage</em>' attribute.
	 * @see #setBackFeedVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_BackFeedVoltage()
	 * @generated
	 */
	Voltage getBackFeedVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getBackFeedVoltage <em>Back Feed Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Back Feed Voltage</em>' attribute.
	 * @see #getBackFeedVoltage()
	 * @generated
	 */
	void setBackFeedVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Tested</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TestResult}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tested</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #setTested(TestResult)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_Tested()
	 * @generated
	 */
	TestResult getTested();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getTested <em>Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tested</em>' attribute.
	 * @see garboard.model.TestResult
	 * @see #getTested()
	 * @generated
	 */
	void setTested(TestResult value);

	/**
	 * Returns the value of the '<em><b>Rated Current</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rated Current</em>' attribute.
	 * @see #setRatedCurrent(Current)
	 * @see garboard.model.GarboardPackage#getTransferSwitch_RatedCurrent()
	 * @generated
	 */
	Current getRatedCurrent();

	/**
	 * Sets the value of the '{@link garboard.model.TransferSwitch#getRatedCurrent <em>Rated Current</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Current</em>' attribute.
	 * @see #getRatedCurrent()
	 * @generated
	 */
	void setRatedCurrent(Current value);

} // TransferSwitch
