/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fuel Line Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.FuelLineRun#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getFunction <em>Function</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getMarking <em>Marking</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getWorkingPressure <em>Working Pressure</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getBarbedEnds <em>Barbed Ends</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getInEngineSpace <em>In Engine Space</em>}</li>
 *   <li>{@link garboard.model.FuelLineRun#getInstalledOn <em>Installed On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getFuelLineRun()
 * @generated
 */
public interface FuelLineRun extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Function</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FuelLineFunction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Function</em>' attribute.
	 * @see garboard.model.FuelLineFunction
	 * @see #setFunction(FuelLineFunction)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Function()
	 * @generated
	 */
	FuelLineFunction getFunction();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getFunction <em>Function</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Function</em>' attribute.
	 * @see garboard.model.FuelLineFunction
	 * @see #getFunction()
	 * @generated
	 */
	void setFunction(FuelLineFunction value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FuelLineKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.FuelLineKind
	 * @see #setKind(FuelLineKind)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Kind()
	 * @generated
	 */
	FuelLineKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.FuelLineKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(FuelLineKind value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Length)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Length()
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Marking</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Marking</em>' attribute.
	 * @see #setMarking(String)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_Marking()
	 * @generated
	 */
	String getMarking();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getMarking <em>Marking</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Marking</em>' attribute.
	 * @see #getMarking()
	 * @generated
	 */
	void setMarking(String value);

	/**
	 * Returns the value of the '<em><b>Working Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Working Pressure</em>' attribute.
	 * @see #setWorkingPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_WorkingPressure()
	 * @generated
	 */
	GaugePressure getWorkingPressure();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getWorkingPressure <em>Working Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Working Pressure</em>' attribute.
	 * @see #getWorkingPressure()
	 * @generated
	 */
	void setWorkingPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clamps Per End</em>' attribute.
	 * @see #setClampsPerEnd(Integer)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_ClampsPerEnd()
	 * @generated
	 */
	Integer getClampsPerEnd();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getClampsPerEnd <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clamps Per End</em>' attribute.
	 * @see #getClampsPerEnd()
	 * @generated
	 */
	void setClampsPerEnd(Integer value);

	/**
	 * Returns the value of the '<em><b>Barbed Ends</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Barbed Ends</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBarbedEnds(Answer)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_BarbedEnds()
	 * @generated
	 */
	Answer getBarbedEnds();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getBarbedEnds <em>Barbed Ends</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Barbed Ends</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBarbedEnds()
	 * @generated
	 */
	void setBarbedEnds(Answer value);

	/**
	 * Returns the value of the '<em><b>In Engine Space</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Engine Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setInEngineSpace(Answer)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_InEngineSpace()
	 * @generated
	 */
	Answer getInEngineSpace();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getInEngineSpace <em>In Engine Space</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Engine Space</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getInEngineSpace()
	 * @generated
	 */
	void setInEngineSpace(Answer value);

	/**
	 * Returns the value of the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed On</em>' attribute.
	 * @see #setInstalledOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getFuelLineRun_InstalledOn()
	 * @generated
	 */
	LocalDate getInstalledOn();

	/**
	 * Sets the value of the '{@link garboard.model.FuelLineRun#getInstalledOn <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed On</em>' attribute.
	 * @see #getInstalledOn()
	 * @generated
	 */
	void setInstalledOn(LocalDate value);

} // FuelLineRun
