/**
 */
package garboard.model;

import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Riser</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Riser#getDryCrestInside <em>Dry Crest Inside</em>}</li>
 *   <li>{@link garboard.model.Riser#getInjectionOnFallingLeg <em>Injection On Falling Leg</em>}</li>
 *   <li>{@link garboard.model.Riser#getInjectionPointsDown <em>Injection Points Down</em>}</li>
 *   <li>{@link garboard.model.Riser#getInjectionDropToMuffler <em>Injection Drop To Muffler</em>}</li>
 *   <li>{@link garboard.model.Riser#getLiftHeight <em>Lift Height</em>}</li>
 *   <li>{@link garboard.model.Riser#getElbowBore <em>Elbow Bore</em>}</li>
 *   <li>{@link garboard.model.Riser#getElbowInspectedOn <em>Elbow Inspected On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getRiser()
 * @generated
 */
public interface Riser extends EObject {
	/**
	 * Returns the value of the '<em><b>Dry Crest Inside</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dry Crest Inside</em>' containment reference.
	 * @see #setDryCrestInside(Point)
	 * @see garboard.model.GarboardPackage#getRiser_DryCrestInside()
	 * @generated
	 */
	Point getDryCrestInside();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getDryCrestInside <em>Dry Crest Inside</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Crest Inside</em>' containment reference.
	 * @see #getDryCrestInside()
	 * @generated
	 */
	void setDryCrestInside(Point value);

	/**
	 * Returns the value of the '<em><b>Injection On Falling Leg</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Injection On Falling Leg</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInjectionOnFallingLeg(Answer)
	 * @see garboard.model.GarboardPackage#getRiser_InjectionOnFallingLeg()
	 * @generated
	 */
	Answer getInjectionOnFallingLeg();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getInjectionOnFallingLeg <em>Injection On Falling Leg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Injection On Falling Leg</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInjectionOnFallingLeg()
	 * @generated
	 */
	void setInjectionOnFallingLeg(Answer value);

	/**
	 * Returns the value of the '<em><b>Injection Points Down</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Injection Points Down</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInjectionPointsDown(Answer)
	 * @see garboard.model.GarboardPackage#getRiser_InjectionPointsDown()
	 * @generated
	 */
	Answer getInjectionPointsDown();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getInjectionPointsDown <em>Injection Points Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Injection Points Down</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInjectionPointsDown()
	 * @generated
	 */
	void setInjectionPointsDown(Answer value);

	/**
	 * Returns the value of the '<em><b>Injection Drop To Muffler</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Injection Drop To Muffler</em>' attribute.
	 * @see #setInjectionDropToMuffler(Length)
	 * @see garboard.model.GarboardPackage#getRiser_InjectionDropToMuffler()
	 * @generated
	 */
	Length getInjectionDropToMuffler();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getInjectionDropToMuffler <em>Injection Drop To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Injection Drop To Muffler</em>' attribute.
	 * @see #getInjectionDropToMuffler()
	 * @generated
	 */
	void setInjectionDropToMuffler(Length value);

	/**
	 * Returns the value of the '<em><b>Lift Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lift Height</em>' attribute.
	 * @see #setLiftHeight(Length)
	 * @see garboard.model.GarboardPackage#getRiser_LiftHeight()
	 * @generated
	 */
	Length getLiftHeight();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getLiftHeight <em>Lift Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lift Height</em>' attribute.
	 * @see #getLiftHeight()
	 * @generated
	 */
	void setLiftHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Elbow Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elbow Bore</em>' attribute.
	 * @see #setElbowBore(Length)
	 * @see garboard.model.GarboardPackage#getRiser_ElbowBore()
	 * @generated
	 */
	Length getElbowBore();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getElbowBore <em>Elbow Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elbow Bore</em>' attribute.
	 * @see #getElbowBore()
	 * @generated
	 */
	void setElbowBore(Length value);

	/**
	 * Returns the value of the '<em><b>Elbow Inspected On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elbow Inspected On</em>' attribute.
	 * @see #setElbowInspectedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getRiser_ElbowInspectedOn()
	 * @generated
	 */
	LocalDate getElbowInspectedOn();

	/**
	 * Sets the value of the '{@link garboard.model.Riser#getElbowInspectedOn <em>Elbow Inspected On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elbow Inspected On</em>' attribute.
	 * @see #getElbowInspectedOn()
	 * @generated
	 */
	void setElbowInspectedOn(LocalDate value);

} // Riser
