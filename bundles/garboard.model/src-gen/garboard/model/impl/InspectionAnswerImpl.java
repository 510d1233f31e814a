/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Inspection Answer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getQuestion <em>Question</em>}</li>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getAnswer <em>Answer</em>}</li>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getNote <em>Note</em>}</li>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getAnsweredBy <em>Answered By</em>}</li>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getAnsweredOn <em>Answered On</em>}</li>
 *   <li>{@link garboard.model.impl.InspectionAnswerImpl#getPhotographs <em>Photographs</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InspectionAnswerImpl extends ItemImpl implements InspectionAnswer {
	/**
	 * The default value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected static final String QUESTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected String question = QUESTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnswer() <em>Answer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnswer()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ANSWER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAnswer() <em>Answer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnswer()
	 * @generated
	 * @ordered
	 */
	protected Answer answer = ANSWER_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnsweredBy() <em>Answered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnsweredBy()
	 * @generated
	 * @ordered
	 */
	protected static final String ANSWERED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnsweredBy() <em>Answered By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnsweredBy()
	 * @generated
	 * @ordered
	 */
	protected String answeredBy = ANSWERED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getAnsweredOn() <em>Answered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnsweredOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate ANSWERED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAnsweredOn() <em>Answered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnsweredOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate answeredOn = ANSWERED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPhotographs() <em>Photographs</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhotographs()
	 * @generated
	 * @ordered
	 */
	protected EList<Photograph> photographs;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InspectionAnswerImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.INSPECTION_ANSWER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuestion() {
		return question;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuestion(String newQuestion) {
		String oldQuestion = question;
		question = newQuestion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSPECTION_ANSWER__QUESTION, oldQuestion, question));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAnswer() {
		return answer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnswer(Answer newAnswer) {
		Answer oldAnswer = answer;
		answer = newAnswer == null ? ANSWER_EDEFAULT : newAnswer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSPECTION_ANSWER__ANSWER, oldAnswer, answer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSPECTION_ANSWER__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAnsweredBy() {
		return answeredBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnsweredBy(String newAnsweredBy) {
		String oldAnsweredBy = answeredBy;
		answeredBy = newAnsweredBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSPECTION_ANSWER__ANSWERED_BY, oldAnsweredBy, answeredBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getAnsweredOn() {
		return answeredOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnsweredOn(LocalDate newAnsweredOn) {
		LocalDate oldAnsweredOn = answeredOn;
		answeredOn = newAnsweredOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.INSPECTION_ANSWER__ANSWERED_ON, oldAnsweredOn, answeredOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Photograph> getPhotographs() {
		if (photographs == null) {
			photographs = new EObjectEList<Photograph>(Photograph.class, this, GarboardPackage.INSPECTION_ANSWER__PHOTOGRAPHS);
		}
		return photographs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.INSPECTION_ANSWER__QUESTION:
				return getQuestion();
			case GarboardPackage.INSPECTION_ANSWER__ANSWER:
				return getAnswer();
			case GarboardPackage.INSPECTION_ANSWER__NOTE:
				return getNote();
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_BY:
				return getAnsweredBy();
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_ON:
				return getAnsweredOn();
			case GarboardPackage.INSPECTION_ANSWER__PHOTOGRAPHS:
				return getPhotographs();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.INSPECTION_ANSWER__QUESTION:
				setQuestion((String)newValue);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWER:
				setAnswer((Answer)newValue);
				return;
			case GarboardPackage.INSPECTION_ANSWER__NOTE:
				setNote((String)newValue);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_BY:
				setAnsweredBy((String)newValue);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_ON:
				setAnsweredOn((LocalDate)newValue);
				return;
			case GarboardPackage.INSPECTION_ANSWER__PHOTOGRAPHS:
				getPhotographs().clear();
				getPhotographs().addAll((Collection<? extends Photograph>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.INSPECTION_ANSWER__QUESTION:
				setQuestion(QUESTION_EDEFAULT);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWER:
				setAnswer(ANSWER_EDEFAULT);
				return;
			case GarboardPackage.INSPECTION_ANSWER__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_BY:
				setAnsweredBy(ANSWERED_BY_EDEFAULT);
				return;
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_ON:
				setAnsweredOn(ANSWERED_ON_EDEFAULT);
				return;
			case GarboardPackage.INSPECTION_ANSWER__PHOTOGRAPHS:
				getPhotographs().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.INSPECTION_ANSWER__QUESTION:
				return QUESTION_EDEFAULT == null ? question != null : !QUESTION_EDEFAULT.equals(question);
			case GarboardPackage.INSPECTION_ANSWER__ANSWER:
				return answer != ANSWER_EDEFAULT;
			case GarboardPackage.INSPECTION_ANSWER__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_BY:
				return ANSWERED_BY_EDEFAULT == null ? answeredBy != null : !ANSWERED_BY_EDEFAULT.equals(answeredBy);
			case GarboardPackage.INSPECTION_ANSWER__ANSWERED_ON:
				return ANSWERED_ON_EDEFAULT == null ? answeredOn != null : !ANSWERED_ON_EDEFAULT.equals(answeredOn);
			case GarboardPackage.INSPECTION_ANSWER__PHOTOGRAPHS:
				return photographs != null && !photographs.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (question: ");
		result.append(question);
		result.append(", answer: ");
		result.append(answer);
		result.append(", note: ");
		result.append(note);
		result.append(", answeredBy: ");
		result.append(answeredBy);
		result.append(", answeredOn: ");
		result.append(answeredOn);
		result.append(')');
		return result.toString();
	}

} //InspectionAnswerImpl
