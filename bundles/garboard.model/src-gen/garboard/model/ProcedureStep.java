/**
 */
package garboard.model;

import java.time.OffsetDateTime;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Procedure Step</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ProcedureStep#getNumber <em>Number</em>}</li>
 *   <li>{@link garboard.model.ProcedureStep#getStep <em>Step</em>}</li>
 *   <li>{@link garboard.model.ProcedureStep#getDone <em>Done</em>}</li>
 *   <li>{@link garboard.model.ProcedureStep#getAt <em>At</em>}</li>
 *   <li>{@link garboard.model.ProcedureStep#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getProcedureStep()
 * @generated
 */
public interface ProcedureStep extends Item {
	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(Integer)
	 * @see garboard.model.GarboardPackage#getProcedureStep_Number()
	 * @generated
	 */
	Integer getNumber();

	/**
	 * Sets the value of the '{@link garboard.model.ProcedureStep#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(Integer value);

	/**
	 * Returns the value of the '<em><b>Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step</em>' attribute.
	 * @see #setStep(String)
	 * @see garboard.model.GarboardPackage#getProcedureStep_Step()
	 * @generated
	 */
	String getStep();

	/**
	 * Sets the value of the '{@link garboard.model.ProcedureStep#getStep <em>Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step</em>' attribute.
	 * @see #getStep()
	 * @generated
	 */
	void setStep(String value);

	/**
	 * Returns the value of the '<em><b>Done</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Done</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDone(Answer)
	 * @see garboard.model.GarboardPackage#getProcedureStep_Done()
	 * @generated
	 */
	Answer getDone();

	/**
	 * Sets the value of the '{@link garboard.model.ProcedureStep#getDone <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Done</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDone()
	 * @generated
	 */
	void setDone(Answer value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(OffsetDateTime)
	 * @see garboard.model.GarboardPackage#getProcedureStep_At()
	 * @generated
	 */
	OffsetDateTime getAt();

	/**
	 * Sets the value of the '{@link garboard.model.ProcedureStep#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(OffsetDateTime value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see garboard.model.GarboardPackage#getProcedureStep_Note()
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link garboard.model.ProcedureStep#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // ProcedureStep
