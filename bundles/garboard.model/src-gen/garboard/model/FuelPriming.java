/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.TimeSpan;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fuel Priming</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.FuelPriming#getKeyCycles <em>Key Cycles</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getCycleTime <em>Cycle Time</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getFeedPressure <em>Feed Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getRailPressure <em>Rail Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getHeldFor <em>Held For</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getBubblesGone <em>Bubbles Gone</em>}</li>
 *   <li>{@link garboard.model.FuelPriming#getLeaks <em>Leaks</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getFuelPriming()
 * @generated
 */
public interface FuelPriming extends EObject {
	/**
	 * Returns the value of the '<em><b>Key Cycles</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Key Cycles</em>' attribute.
	 * @see #setKeyCycles(Integer)
	 * @see garboard.model.GarboardPackage#getFuelPriming_KeyCycles()
	 * @generated
	 */
	Integer getKeyCycles();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getKeyCycles <em>Key Cycles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key Cycles</em>' attribute.
	 * @see #getKeyCycles()
	 * @generated
	 */
	void setKeyCycles(Integer value);

	/**
	 * Returns the value of the '<em><b>Cycle Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cycle Time</em>' attribute.
	 * @see #setCycleTime(TimeSpan)
	 * @see garboard.model.GarboardPackage#getFuelPriming_CycleTime()
	 * @generated
	 */
	TimeSpan getCycleTime();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getCycleTime <em>Cycle Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cycle Time</em>' attribute.
	 * @see #getCycleTime()
	 * @generated
	 */
	void setCycleTime(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Feed Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Feed Pressure</em>' attribute.
	 * @see #setFeedPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelPriming_FeedPressure()
	 * @generated
	 */
	GaugePressure getFeedPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getFeedPressure <em>Feed Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Feed Pressure</em>' attribute.
	 * @see #getFeedPressure()
	 * @generated
	 */
	void setFeedPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Rail Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rail Pressure</em>' attribute.
	 * @see #setRailPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelPriming_RailPressure()
	 * @generated
	 */
	GaugePressure getRailPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getRailPressure <em>Rail Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rail Pressure</em>' attribute.
	 * @see #getRailPressure()
	 * @generated
	 */
	void setRailPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Held For</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Held For</em>' attribute.
	 * @see #setHeldFor(TimeSpan)
	 * @see garboard.model.GarboardPackage#getFuelPriming_HeldFor()
	 * @generated
	 */
	TimeSpan getHeldFor();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getHeldFor <em>Held For</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Held For</em>' attribute.
	 * @see #getHeldFor()
	 * @generated
	 */
	void setHeldFor(TimeSpan value);

	/**
	 * Returns the value of the '<em><b>Bubbles Gone</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bubbles Gone</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBubblesGone(Answer)
	 * @see garboard.model.GarboardPackage#getFuelPriming_BubblesGone()
	 * @generated
	 */
	Answer getBubblesGone();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getBubblesGone <em>Bubbles Gone</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bubbles Gone</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBubblesGone()
	 * @generated
	 */
	void setBubblesGone(Answer value);

	/**
	 * Returns the value of the '<em><b>Leaks</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leaks</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLeaks(Answer)
	 * @see garboard.model.GarboardPackage#getFuelPriming_Leaks()
	 * @generated
	 */
	Answer getLeaks();

	/**
	 * Sets the value of the '{@link garboard.model.FuelPriming#getLeaks <em>Leaks</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leaks</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLeaks()
	 * @generated
	 */
	void setLeaks(Answer value);

} // FuelPriming
