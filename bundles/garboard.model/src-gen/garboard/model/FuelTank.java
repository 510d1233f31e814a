/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fuel Tank</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.FuelTank#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getUsableFraction <em>Usable Fraction</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getTop <em>Top</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getBottomHeight <em>Bottom Height</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getLabelled <em>Labelled</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getTestPressureOnLabel <em>Test Pressure On Label</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getTestPressure <em>Test Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getOpeningsAtTop <em>Openings At Top</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getMovement <em>Movement</em>}</li>
 *   <li>{@link garboard.model.FuelTank#getSharedWithMainEngine <em>Shared With Main Engine</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getFuelTank()
 * @generated
 */
public interface FuelTank extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getFuelTank_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.TankMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see garboard.model.TankMaterial
	 * @see #setMaterial(TankMaterial)
	 * @see garboard.model.GarboardPackage#getFuelTank_Material()
	 * @generated
	 */
	TankMaterial getMaterial();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see garboard.model.TankMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(TankMaterial value);

	/**
	 * Returns the value of the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Capacity</em>' attribute.
	 * @see #setCapacity(Volume)
	 * @see garboard.model.GarboardPackage#getFuelTank_Capacity()
	 * @generated
	 */
	Volume getCapacity();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getCapacity <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capacity</em>' attribute.
	 * @see #getCapacity()
	 * @generated
	 */
	void setCapacity(Volume value);

	/**
	 * Returns the value of the '<em><b>Usable Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Usable Fraction</em>' attribute.
	 * @see #setUsableFraction(Ratio)
	 * @see garboard.model.GarboardPackage#getFuelTank_UsableFraction()
	 * @generated
	 */
	Ratio getUsableFraction();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getUsableFraction <em>Usable Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Usable Fraction</em>' attribute.
	 * @see #getUsableFraction()
	 * @generated
	 */
	void setUsableFraction(Ratio value);

	/**
	 * Returns the value of the '<em><b>Top</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Top</em>' containment reference.
	 * @see #setTop(Point)
	 * @see garboard.model.GarboardPackage#getFuelTank_Top()
	 * @generated
	 */
	Point getTop();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getTop <em>Top</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Top</em>' containment reference.
	 * @see #getTop()
	 * @generated
	 */
	void setTop(Point value);

	/**
	 * Returns the value of the '<em><b>Bottom Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bottom Height</em>' attribute.
	 * @see #setBottomHeight(Length)
	 * @see garboard.model.GarboardPackage#getFuelTank_BottomHeight()
	 * @generated
	 */
	Length getBottomHeight();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getBottomHeight <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bottom Height</em>' attribute.
	 * @see #getBottomHeight()
	 * @generated
	 */
	void setBottomHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Labelled</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Labelled</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLabelled(Answer)
	 * @see garboard.model.GarboardPackage#getFuelTank_Labelled()
	 * @generated
	 */
	Answer getLabelled();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getLabelled <em>Labelled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labelled</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLabelled()
	 * @generated
	 */
	void setLabelled(Answer value);

	/**
	 * Returns the value of the '<em><b>Test Pressure On Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Test Pressure On Label</em>' attribute.
	 * @see #setTestPressureOnLabel(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelTank_TestPressureOnLabel()
	 * @generated
	 */
	GaugePressure getTestPressureOnLabel();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getTestPressureOnLabel <em>Test Pressure On Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Test Pressure On Label</em>' attribute.
	 * @see #getTestPressureOnLabel()
	 * @generated
	 */
	void setTestPressureOnLabel(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Test Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Test Pressure</em>' attribute.
	 * @see #setTestPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelTank_TestPressure()
	 * @generated
	 */
	GaugePressure getTestPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getTestPressure <em>Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Test Pressure</em>' attribute.
	 * @see #getTestPressure()
	 * @generated
	 */
	void setTestPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Openings At Top</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Openings At Top</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOpeningsAtTop(Answer)
	 * @see garboard.model.GarboardPackage#getFuelTank_OpeningsAtTop()
	 * @generated
	 */
	Answer getOpeningsAtTop();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getOpeningsAtTop <em>Openings At Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Openings At Top</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOpeningsAtTop()
	 * @generated
	 */
	void setOpeningsAtTop(Answer value);

	/**
	 * Returns the value of the '<em><b>Movement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Movement</em>' attribute.
	 * @see #setMovement(Length)
	 * @see garboard.model.GarboardPackage#getFuelTank_Movement()
	 * @generated
	 */
	Length getMovement();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getMovement <em>Movement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Movement</em>' attribute.
	 * @see #getMovement()
	 * @generated
	 */
	void setMovement(Length value);

	/**
	 * Returns the value of the '<em><b>Shared With Main Engine</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shared With Main Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSharedWithMainEngine(Answer)
	 * @see garboard.model.GarboardPackage#getFuelTank_SharedWithMainEngine()
	 * @generated
	 */
	Answer getSharedWithMainEngine();

	/**
	 * Sets the value of the '{@link garboard.model.FuelTank#getSharedWithMainEngine <em>Shared With Main Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shared With Main Engine</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSharedWithMainEngine()
	 * @generated
	 */
	void setSharedWithMainEngine(Answer value);

} // FuelTank
