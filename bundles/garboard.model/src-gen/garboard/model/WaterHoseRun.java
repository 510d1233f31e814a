/**
 */
package garboard.model;

import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Water Hose Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.WaterHoseRun#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getSection <em>Section</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getCollapseProof <em>Collapse Proof</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getFittings <em>Fittings</em>}</li>
 *   <li>{@link garboard.model.WaterHoseRun#getInstalledOn <em>Installed On</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getWaterHoseRun()
 * @generated
 */
public interface WaterHoseRun extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Section</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.WaterSection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Section</em>' attribute.
	 * @see garboard.model.WaterSection
	 * @see #setSection(WaterSection)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Section()
	 * @generated
	 */
	WaterSection getSection();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getSection <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Section</em>' attribute.
	 * @see garboard.model.WaterSection
	 * @see #getSection()
	 * @generated
	 */
	void setSection(WaterSection value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.WaterHoseKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.WaterHoseKind
	 * @see #setKind(WaterHoseKind)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Kind()
	 * @generated
	 */
	WaterHoseKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.WaterHoseKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(WaterHoseKind value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getBore <em>Bore</em>}' attribute.
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
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Length()
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clamps Per End</em>' attribute.
	 * @see #setClampsPerEnd(Integer)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_ClampsPerEnd()
	 * @generated
	 */
	Integer getClampsPerEnd();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getClampsPerEnd <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clamps Per End</em>' attribute.
	 * @see #getClampsPerEnd()
	 * @generated
	 */
	void setClampsPerEnd(Integer value);

	/**
	 * Returns the value of the '<em><b>Collapse Proof</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Collapse Proof</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setCollapseProof(Answer)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_CollapseProof()
	 * @generated
	 */
	Answer getCollapseProof();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getCollapseProof <em>Collapse Proof</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Collapse Proof</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getCollapseProof()
	 * @generated
	 */
	void setCollapseProof(Answer value);

	/**
	 * Returns the value of the '<em><b>Fittings</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.PipeFitting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fittings</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_Fittings()
	 * @generated
	 */
	EList<PipeFitting> getFittings();

	/**
	 * Returns the value of the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed On</em>' attribute.
	 * @see #setInstalledOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getWaterHoseRun_InstalledOn()
	 * @generated
	 */
	LocalDate getInstalledOn();

	/**
	 * Sets the value of the '{@link garboard.model.WaterHoseRun#getInstalledOn <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed On</em>' attribute.
	 * @see #getInstalledOn()
	 * @generated
	 */
	void setInstalledOn(LocalDate value);

} // WaterHoseRun
