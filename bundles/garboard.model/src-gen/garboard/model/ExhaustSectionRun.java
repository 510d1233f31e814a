/**
 */
package garboard.model;

import garboard.quantity.Length;
import garboard.quantity.Temperature;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Section Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustSectionRun#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getSection <em>Section</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getStandard <em>Standard</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getRise <em>Rise</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getFall <em>Fall</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getSlopesBackToMuffler <em>Slopes Back To Muffler</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getBends <em>Bends</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getClampBandWidth <em>Clamp Band Width</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getSupportSpacing <em>Support Spacing</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getSagFree <em>Sag Free</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.ExhaustSectionRun#getGasTemperature <em>Gas Temperature</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustSectionRun()
 * @generated
 */
public interface ExhaustSectionRun extends Item {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Name()
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Section</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ExhaustSection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Section</em>' attribute.
	 * @see garboard.model.ExhaustSection
	 * @see #setSection(ExhaustSection)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Section()
	 * @generated
	 */
	ExhaustSection getSection();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getSection <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Section</em>' attribute.
	 * @see garboard.model.ExhaustSection
	 * @see #getSection()
	 * @generated
	 */
	void setSection(ExhaustSection value);

	/**
	 * Returns the value of the '<em><b>Standard</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.ExhaustHoseStandard}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Standard</em>' attribute.
	 * @see garboard.model.ExhaustHoseStandard
	 * @see #setStandard(ExhaustHoseStandard)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Standard()
	 * @generated
	 */
	ExhaustHoseStandard getStandard();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getStandard <em>Standard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Standard</em>' attribute.
	 * @see garboard.model.ExhaustHoseStandard
	 * @see #getStandard()
	 * @generated
	 */
	void setStandard(ExhaustHoseStandard value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getBore <em>Bore</em>}' attribute.
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
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Length()
	 * @generated
	 */
	Length getLength();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Length value);

	/**
	 * Returns the value of the '<em><b>Rise</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rise</em>' attribute.
	 * @see #setRise(Length)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Rise()
	 * @generated
	 */
	Length getRise();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getRise <em>Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rise</em>' attribute.
	 * @see #getRise()
	 * @generated
	 */
	void setRise(Length value);

	/**
	 * Returns the value of the '<em><b>Fall</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fall</em>' attribute.
	 * @see #setFall(Length)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Fall()
	 * @generated
	 */
	Length getFall();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getFall <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fall</em>' attribute.
	 * @see #getFall()
	 * @generated
	 */
	void setFall(Length value);

	/**
	 * Returns the value of the '<em><b>Slopes Back To Muffler</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Slopes Back To Muffler</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSlopesBackToMuffler(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_SlopesBackToMuffler()
	 * @generated
	 */
	Answer getSlopesBackToMuffler();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getSlopesBackToMuffler <em>Slopes Back To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slopes Back To Muffler</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSlopesBackToMuffler()
	 * @generated
	 */
	void setSlopesBackToMuffler(Answer value);

	/**
	 * Returns the value of the '<em><b>Bends</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.ExhaustBend}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bends</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_Bends()
	 * @generated
	 */
	EList<ExhaustBend> getBends();

	/**
	 * Returns the value of the '<em><b>Clamps Per End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clamps Per End</em>' attribute.
	 * @see #setClampsPerEnd(Integer)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_ClampsPerEnd()
	 * @generated
	 */
	Integer getClampsPerEnd();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getClampsPerEnd <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clamps Per End</em>' attribute.
	 * @see #getClampsPerEnd()
	 * @generated
	 */
	void setClampsPerEnd(Integer value);

	/**
	 * Returns the value of the '<em><b>Clamp Band Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clamp Band Width</em>' attribute.
	 * @see #setClampBandWidth(Length)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_ClampBandWidth()
	 * @generated
	 */
	Length getClampBandWidth();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getClampBandWidth <em>Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clamp Band Width</em>' attribute.
	 * @see #getClampBandWidth()
	 * @generated
	 */
	void setClampBandWidth(Length value);

	/**
	 * Returns the value of the '<em><b>Support Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Support Spacing</em>' attribute.
	 * @see #setSupportSpacing(Length)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_SupportSpacing()
	 * @generated
	 */
	Length getSupportSpacing();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getSupportSpacing <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Support Spacing</em>' attribute.
	 * @see #getSupportSpacing()
	 * @generated
	 */
	void setSupportSpacing(Length value);

	/**
	 * Returns the value of the '<em><b>Sag Free</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sag Free</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSagFree(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_SagFree()
	 * @generated
	 */
	Answer getSagFree();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getSagFree <em>Sag Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sag Free</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSagFree()
	 * @generated
	 */
	void setSagFree(Answer value);

	/**
	 * Returns the value of the '<em><b>Installed On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed On</em>' attribute.
	 * @see #setInstalledOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_InstalledOn()
	 * @generated
	 */
	LocalDate getInstalledOn();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getInstalledOn <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed On</em>' attribute.
	 * @see #getInstalledOn()
	 * @generated
	 */
	void setInstalledOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Gas Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gas Temperature</em>' attribute.
	 * @see #setGasTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getExhaustSectionRun_GasTemperature()
	 * @generated
	 */
	Temperature getGasTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustSectionRun#getGasTemperature <em>Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gas Temperature</em>' attribute.
	 * @see #getGasTemperature()
	 * @generated
	 */
	void setGasTemperature(Temperature value);

} // ExhaustSectionRun
