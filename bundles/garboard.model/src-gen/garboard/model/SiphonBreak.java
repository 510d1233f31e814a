/**
 */
package garboard.model;

import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Siphon Break</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.SiphonBreak#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getVentSeat <em>Vent Seat</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getHighestPoint <em>Highest Point</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getVentHose <em>Vent Hose</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getVentHoseFree <em>Vent Hose Free</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getVentHoseEndHeight <em>Vent Hose End Height</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getBleedBore <em>Bleed Bore</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getTellTaleVisible <em>Tell Tale Visible</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getAboveElectrics <em>Above Electrics</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getDripShield <em>Drip Shield</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getServicedOn <em>Serviced On</em>}</li>
 *   <li>{@link garboard.model.SiphonBreak#getValveTested <em>Valve Tested</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getSiphonBreak()
 * @generated
 */
public interface SiphonBreak extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.SiphonBreakKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.SiphonBreakKind
	 * @see #setKind(SiphonBreakKind)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_Kind()
	 * @generated
	 */
	SiphonBreakKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.SiphonBreakKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(SiphonBreakKind value);

	/**
	 * Returns the value of the '<em><b>Vent Seat</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent Seat</em>' containment reference.
	 * @see #setVentSeat(Point)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_VentSeat()
	 * @generated
	 */
	Point getVentSeat();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getVentSeat <em>Vent Seat</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Seat</em>' containment reference.
	 * @see #getVentSeat()
	 * @generated
	 */
	void setVentSeat(Point value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.SiphonBreakPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see garboard.model.SiphonBreakPlace
	 * @see #setPlace(SiphonBreakPlace)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_Place()
	 * @generated
	 */
	SiphonBreakPlace getPlace();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see garboard.model.SiphonBreakPlace
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(SiphonBreakPlace value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Highest Point</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Highest Point</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setHighestPoint(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_HighestPoint()
	 * @generated
	 */
	Answer getHighestPoint();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getHighestPoint <em>Highest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Highest Point</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getHighestPoint()
	 * @generated
	 */
	void setHighestPoint(Answer value);

	/**
	 * Returns the value of the '<em><b>Vent Hose</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.VentHoseEnd}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent Hose</em>' attribute.
	 * @see garboard.model.VentHoseEnd
	 * @see #setVentHose(VentHoseEnd)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_VentHose()
	 * @generated
	 */
	VentHoseEnd getVentHose();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getVentHose <em>Vent Hose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Hose</em>' attribute.
	 * @see garboard.model.VentHoseEnd
	 * @see #getVentHose()
	 * @generated
	 */
	void setVentHose(VentHoseEnd value);

	/**
	 * Returns the value of the '<em><b>Vent Hose Free</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent Hose Free</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setVentHoseFree(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_VentHoseFree()
	 * @generated
	 */
	Answer getVentHoseFree();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getVentHoseFree <em>Vent Hose Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Hose Free</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getVentHoseFree()
	 * @generated
	 */
	void setVentHoseFree(Answer value);

	/**
	 * Returns the value of the '<em><b>Vent Hose End Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent Hose End Height</em>' attribute.
	 * @see #setVentHoseEndHeight(Length)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_VentHoseEndHeight()
	 * @generated
	 */
	Length getVentHoseEndHeight();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getVentHoseEndHeight <em>Vent Hose End Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Hose End Height</em>' attribute.
	 * @see #getVentHoseEndHeight()
	 * @generated
	 */
	void setVentHoseEndHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Bleed Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bleed Bore</em>' attribute.
	 * @see #setBleedBore(Length)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_BleedBore()
	 * @generated
	 */
	Length getBleedBore();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getBleedBore <em>Bleed Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bleed Bore</em>' attribute.
	 * @see #getBleedBore()
	 * @generated
	 */
	void setBleedBore(Length value);

	/**
	 * Returns the value of the '<em><b>Tell Tale Visible</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tell Tale Visible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTellTaleVisible(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_TellTaleVisible()
	 * @generated
	 */
	Answer getTellTaleVisible();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getTellTaleVisible <em>Tell Tale Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tell Tale Visible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTellTaleVisible()
	 * @generated
	 */
	void setTellTaleVisible(Answer value);

	/**
	 * Returns the value of the '<em><b>Above Electrics</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Above Electrics</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAboveElectrics(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_AboveElectrics()
	 * @generated
	 */
	Answer getAboveElectrics();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getAboveElectrics <em>Above Electrics</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Above Electrics</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAboveElectrics()
	 * @generated
	 */
	void setAboveElectrics(Answer value);

	/**
	 * Returns the value of the '<em><b>Drip Shield</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Drip Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDripShield(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_DripShield()
	 * @generated
	 */
	Answer getDripShield();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getDripShield <em>Drip Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drip Shield</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDripShield()
	 * @generated
	 */
	void setDripShield(Answer value);

	/**
	 * Returns the value of the '<em><b>Serviced On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Serviced On</em>' attribute.
	 * @see #setServicedOn(LocalDate)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_ServicedOn()
	 * @generated
	 */
	LocalDate getServicedOn();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getServicedOn <em>Serviced On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Serviced On</em>' attribute.
	 * @see #getServicedOn()
	 * @generated
	 */
	void setServicedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Valve Tested</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Valve Tested</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setValveTested(Answer)
	 * @see garboard.model.GarboardPackage#getSiphonBreak_ValveTested()
	 * @generated
	 */
	Answer getValveTested();

	/**
	 * Sets the value of the '{@link garboard.model.SiphonBreak#getValveTested <em>Valve Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Valve Tested</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getValveTested()
	 * @generated
	 */
	void setValveTested(Answer value);

} // SiphonBreak
