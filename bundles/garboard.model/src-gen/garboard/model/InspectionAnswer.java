/**
 */
package garboard.model;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Inspection Answer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.InspectionAnswer#getQuestion <em>Question</em>}</li>
 *   <li>{@link garboard.model.InspectionAnswer#getAnswer <em>Answer</em>}</li>
 *   <li>{@link garboard.model.InspectionAnswer#getNote <em>Note</em>}</li>
 *   <li>{@link garboard.model.InspectionAnswer#getAnsweredBy <em>Answered By</em>}</li>
 *   <li>{@link garboard.model.InspectionAnswer#getAnsweredOn <em>Answered On</em>}</li>
 *   <li>{@link garboard.model.InspectionAnswer#getPhotographs <em>Photographs</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getInspectionAnswer()
 * @generated
 */
public interface InspectionAnswer extends Item {
	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_Question()
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link garboard.model.InspectionAnswer#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>Answer</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Answer</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAnswer(Answer)
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_Answer()
	 * @generated
	 */
	Answer getAnswer();

	/**
	 * Sets the value of the '{@link garboard.model.InspectionAnswer#getAnswer <em>Answer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Answer</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAnswer()
	 * @generated
	 */
	void setAnswer(Answer value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_Note()
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link garboard.model.InspectionAnswer#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Answered By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Answered By</em>' attribute.
	 * @see #setAnsweredBy(String)
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_AnsweredBy()
	 * @generated
	 */
	String getAnsweredBy();

	/**
	 * Sets the value of the '{@link garboard.model.InspectionAnswer#getAnsweredBy <em>Answered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Answered By</em>' attribute.
	 * @see #getAnsweredBy()
	 * @generated
	 */
	void setAnsweredBy(String value);

	/**
	 * Returns the value of the '<em><b>Answered On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Answered On</em>' attribute.
	 * @see #setAnsweredOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_AnsweredOn()
	 * @generated
	 */
	LocalDate getAnsweredOn();

	/**
	 * Sets the value of the '{@link garboard.model.InspectionAnswer#getAnsweredOn <em>Answered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Answered On</em>' attribute.
	 * @see #getAnsweredOn()
	 * @generated
	 */
	void setAnsweredOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Photographs</b></em>' reference list.
	 * The list contents are of type {@link garboard.model.Photograph}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Photographs</em>' reference list.
	 * @see garboard.model.GarboardPackage#getInspectionAnswer_Photographs()
	 * @generated
	 */
	EList<Photograph> getPhotographs();

} // InspectionAnswer
