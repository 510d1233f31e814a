/**
 */
package garboard.model;

import garboard.quantity.Area;
import garboard.quantity.Length;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Air Duct</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.AirDuct#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getArea <em>Area</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getEndFittingArea <em>End Fitting Area</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getFlexible <em>Flexible</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getMouthHeight <em>Mouth Height</em>}</li>
 *   <li>{@link garboard.model.AirDuct#getTerminatesOutside <em>Terminates Outside</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getAirDuct()
 * @generated
 */
public interface AirDuct extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getAirDuct_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Function</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.DuctFunction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Function</em>' attribute.
	 * @see garboard.model.DuctFunction
	 * @see #setFunction(DuctFunction)
	 * @see garboard.model.GarboardPackage#getAirDuct_Function()
	 * @generated
	 */
	DuctFunction getFunction();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getFunction <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Function</em>' attribute.
	 * @see garboard.model.DuctFunction
	 * @see #getFunction()
	 * @generated
	 */
	void setFunction(DuctFunction value);

	/**
	 * Returns the value of the '<em><b>Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Area</em>' attribute.
	 * @see #setArea(Area)
	 * @see garboard.model.GarboardPackage#getAirDuct_Area()
	 * @generated
	 */
	Area getArea();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getArea <em>Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Area</em>' attribute.
	 * @see #getArea()
	 * @generated
	 */
	void setArea(Area value);

	/**
	 * Returns the value of the '<em><b>End Fitting Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>End Fitting Area</em>' attribute.
	 * @see #setEndFittingArea(Area)
	 * @see garboard.model.GarboardPackage#getAirDuct_EndFittingArea()
	 * @generated
	 */
	Area getEndFittingArea();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getEndFittingArea <em>End Fitting Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End Fitting Area</em>' attribute.
	 * @see #getEndFittingArea()
	 * @generated
	 */
	void setEndFittingArea(Area value);

	/**
	 * Returns the value of the '<em><b>Flexible</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flexible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFlexible(Answer)
	 * @see garboard.model.GarboardPackage#getAirDuct_Flexible()
	 * @generated
	 */
	Answer getFlexible();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getFlexible <em>Flexible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flexible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFlexible()
	 * @generated
	 */
	void setFlexible(Answer value);

	/**
	 * Returns the value of the '<em><b>Mouth Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mouth Height</em>' attribute.
	 * @see #setMouthHeight(Length)
	 * @see garboard.model.GarboardPackage#getAirDuct_MouthHeight()
	 * @generated
	 */
	Length getMouthHeight();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getMouthHeight <em>Mouth Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mouth Height</em>' attribute.
	 * @see #getMouthHeight()
	 * @generated
	 */
	void setMouthHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Terminates Outside</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Terminates Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTerminatesOutside(Answer)
	 * @see garboard.model.GarboardPackage#getAirDuct_TerminatesOutside()
	 * @generated
	 */
	Answer getTerminatesOutside();

	/**
	 * Sets the value of the '{@link garboard.model.AirDuct#getTerminatesOutside <em>Terminates Outside</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Terminates Outside</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTerminatesOutside()
	 * @generated
	 */
	void setTerminatesOutside(Answer value);

} // AirDuct
