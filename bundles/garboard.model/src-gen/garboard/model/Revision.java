/**
 */
package garboard.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Revision</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Revision#getNumber <em>Number</em>}</li>
 *   <li>{@link garboard.model.Revision#getDate <em>Date</em>}</li>
 *   <li>{@link garboard.model.Revision#getBy <em>By</em>}</li>
 *   <li>{@link garboard.model.Revision#getDescription <em>Description</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getRevision()
 * @generated
 */
public interface Revision extends Item {
	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(Integer)
	 * @see garboard.model.GarboardPackage#getRevision_Number()
	 * @generated
	 */
	Integer getNumber();

	/**
	 * Sets the value of the '{@link garboard.model.Revision#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(Integer value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see garboard.model.GarboardPackage#getRevision_Date()
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link garboard.model.Revision#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see garboard.model.GarboardPackage#getRevision_By()
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link garboard.model.Revision#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>Description</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Description</em>' attribute.
	 * @see #setDescription(String)
	 * @see garboard.model.GarboardPackage#getRevision_Description()
	 * @generated
	 */
	String getDescription();

	/**
	 * Sets the value of the '{@link garboard.model.Revision#getDescription <em>Description</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Description</em>' attribute.
	 * @see #getDescription()
	 * @generated
	 */
	void setDescription(String value);

} // Revision
