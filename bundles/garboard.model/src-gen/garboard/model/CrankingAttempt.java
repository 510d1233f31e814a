/**
 */
package garboard.model;

import garboard.quantity.TimeSpan;
import garboard.quantity.Voltage;

import java.time.OffsetDateTime;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cranking Attempt</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.CrankingAttempt#getAt <em>At</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getDuration <em>Duration</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getRest <em>Rest</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getSeacock <em>Seacock</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getFired <em>Fired</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getLowestVoltage <em>Lowest Voltage</em>}</li>
 *   <li>{@link garboard.model.CrankingAttempt#getMufflerDrained <em>Muffler Drained</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getCrankingAttempt()
 * @generated
 */
public interface CrankingAttempt extends Item {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(OffsetDateTime)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_At()
	 * @generated
	 */
	OffsetDateTime getAt();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(OffsetDateTime value);

	/**
	 * Returns the value of the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Duration</em>' attribute.
	 * @see #setDuration(TimeSpan)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_Duration()
	 * @generated
	 */
	TimeSpan getDuration();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getDuration <em>Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Duration</em>' attribute.
	 * @see #getDuration()
	 * @generated
	 */
	void setDuration(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Rest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rest</em>' attribute.
	 * @see #setRest(TimeSpan)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_Rest()
	 * @generated
	 */
	TimeSpan getRest();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getRest <em>Rest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rest</em>' attribute.
	 * @see #getRest()
	 * @generated
	 */
	void setRest(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Seacock</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.SeacockState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Seacock</em>' attribute.
	 * @see garboard.model.SeacockState
	 * @see #setSeacock(SeacockState)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_Seacock()
	 * @generated
	 */
	SeacockState getSeacock();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getSeacock <em>Seacock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seacock</em>' attribute.
	 * @see garboard.model.SeacockState
	 * @see #getSeacock()
	 * @generated
	 */
	void setSeacock(SeacockState value);

	/**
	 * Returns the value of the '<em><b>Fired</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fired</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFired(Answer)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_Fired()
	 * @generated
	 */
	Answer getFired();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getFired <em>Fired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fired</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFired()
	 * @generated
	 */
	void setFired(Answer value);

	/**
	 * Returns the value of the '<em><b>Lowest Voltage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lowest Voltage</em>' attribute.
	 * @see #setLowestVoltage(Voltage)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_LowestVoltage()
	 * @generated
	 */
	Voltage getLowestVoltage();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getLowestVoltage <em>Lowest Voltage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lowest Voltage</em>' attribute.
	 * @see #getLowestVoltage()
	 * @generated
	 */
	void setLowestVoltage(Voltage value);

	/**
	 * Returns the value of the '<em><b>Muffler Drained</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Muffler Drained</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setMufflerDrained(Answer)
	 * @see garboard.model.GarboardPackage#getCrankingAttempt_MufflerDrained()
	 * @generated
	 */
	Answer getMufflerDrained();

	/**
	 * Sets the value of the '{@link garboard.model.CrankingAttempt#getMufflerDrained <em>Muffler Drained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Muffler Drained</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getMufflerDrained()
	 * @generated
	 */
	void setMufflerDrained(Answer value);

} // CrankingAttempt
