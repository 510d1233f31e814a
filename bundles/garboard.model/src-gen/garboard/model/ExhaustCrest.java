/**
 */
package garboard.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Crest</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustCrest#getInsideBottom <em>Inside Bottom</em>}</li>
 *   <li>{@link garboard.model.ExhaustCrest#getVented <em>Vented</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustCrest()
 * @generated
 */
public interface ExhaustCrest extends EObject {
	/**
	 * Returns the value of the '<em><b>Inside Bottom</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inside Bottom</em>' containment reference.
	 * @see #setInsideBottom(Point)
	 * @see garboard.model.GarboardPackage#getExhaustCrest_InsideBottom()
	 * @generated
	 */
	Point getInsideBottom();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustCrest#getInsideBottom <em>Inside Bottom</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside Bottom</em>' containment reference.
	 * @see #getInsideBottom()
	 * @generated
	 */
	void setInsideBottom(Point value);

	/**
	 * Returns the value of the '<em><b>Vented</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vented</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVented(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustCrest_Vented()
	 * @generated
	 */
	Answer getVented();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustCrest#getVented <em>Vented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vented</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVented()
	 * @generated
	 */
	void setVented(Answer value);

} // ExhaustCrest
