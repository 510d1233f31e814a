/**
 */
package garboard.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pipe Fitting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.PipeFitting#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.PipeFitting#getCount <em>Count</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getPipeFitting()
 * @generated
 */
public interface PipeFitting extends Item {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.PipeFittingKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.PipeFittingKind
	 * @see #setKind(PipeFittingKind)
	 * @see garboard.model.GarboardPackage#getPipeFitting_Kind()
	 * @generated
	 */
	PipeFittingKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.PipeFitting#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.PipeFittingKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PipeFittingKind value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Integer)
	 * @see garboard.model.GarboardPackage#getPipeFitting_Count()
	 * @generated
	 */
	Integer getCount();

	/**
	 * Sets the value of the '{@link garboard.model.PipeFitting#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Integer value);

} // PipeFitting
