/**
 */
package garboard.model;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Photograph</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Photograph#getCaption <em>Caption</em>}</li>
 *   <li>{@link garboard.model.Photograph#getTakenOn <em>Taken On</em>}</li>
 *   <li>{@link garboard.model.Photograph#getMediaType <em>Media Type</em>}</li>
 *   <li>{@link garboard.model.Photograph#getData <em>Data</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getPhotograph()
 * @generated
 */
public interface Photograph extends Item {
	/**
	 * Returns the value of the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Caption</em>' attribute.
	 * @see #setCaption(String)
	 * @see garboard.model.GarboardPackage#getPhotograph_Caption()
	 * @generated
	 */
	String getCaption();

	/**
	 * Sets the value of the '{@link garboard.model.Photograph#getCaption <em>Caption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Caption</em>' attribute.
	 * @see #getCaption()
	 * @generated
	 */
	void setCaption(String value);

	/**
	 * Returns the value of the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Taken On</em>' attribute.
	 * @see #setTakenOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getPhotograph_TakenOn()
	 * @generated
	 */
	LocalDate getTakenOn();

	/**
	 * Sets the value of the '{@link garboard.model.Photograph#getTakenOn <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Taken On</em>' attribute.
	 * @see #getTakenOn()
	 * @generated
	 */
	void setTakenOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Media Type</em>' attribute.
	 * @see #setMediaType(String)
	 * @see garboard.model.GarboardPackage#getPhotograph_MediaType()
	 * @generated
	 */
	String getMediaType();

	/**
	 * Sets the value of the '{@link garboard.model.Photograph#getMediaType <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Media Type</em>' attribute.
	 * @see #getMediaType()
	 * @generated
	 */
	void setMediaType(String value);

	/**
	 * Returns the value of the '<em><b>Data</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Data</em>' attribute.
	 * @see #setData(byte[])
	 * @see garboard.model.GarboardPackage#getPhotograph_Data()
	 * @generated
	 */
	byte[] getData();

	/**
	 * Sets the value of the '{@link garboard.model.Photograph#getData <em>Data</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Data</em>' attribute.
	 * @see #getData()
	 * @generated
	 */
	void setData(byte[] value);

} // Photograph
