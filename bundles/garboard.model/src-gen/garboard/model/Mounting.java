/**
 */
package garboard.model;

import garboard.quantity.Angle;
import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mounting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Mounting#getBedsRigid <em>Beds Rigid</em>}</li>
 *   <li>{@link garboard.model.Mounting#getMountsAligned <em>Mounts Aligned</em>}</li>
 *   <li>{@link garboard.model.Mounting#getClearanceAround <em>Clearance Around</em>}</li>
 *   <li>{@link garboard.model.Mounting#getFlexibleConnections <em>Flexible Connections</em>}</li>
 *   <li>{@link garboard.model.Mounting#getDripTray <em>Drip Tray</em>}</li>
 *   <li>{@link garboard.model.Mounting#getAccessForService <em>Access For Service</em>}</li>
 *   <li>{@link garboard.model.Mounting#getBondingConductor <em>Bonding Conductor</em>}</li>
 *   <li>{@link garboard.model.Mounting#getBondedToCommonGround <em>Bonded To Common Ground</em>}</li>
 *   <li>{@link garboard.model.Mounting#getCommonNegativeLink <em>Common Negative Link</em>}</li>
 *   <li>{@link garboard.model.Mounting#getDcNegativeIsolated <em>Dc Negative Isolated</em>}</li>
 *   <li>{@link garboard.model.Mounting#getInstalledAngleFore <em>Installed Angle Fore</em>}</li>
 *   <li>{@link garboard.model.Mounting#getInstalledAngleSide <em>Installed Angle Side</em>}</li>
 *   <li>{@link garboard.model.Mounting#getHeightAboveBilge <em>Height Above Bilge</em>}</li>
 *   <li>{@link garboard.model.Mounting#getAnodesFitted <em>Anodes Fitted</em>}</li>
 *   <li>{@link garboard.model.Mounting#getLabelsPosted <em>Labels Posted</em>}</li>
 *   <li>{@link garboard.model.Mounting#getRotatingPartsGuarded <em>Rotating Parts Guarded</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getMounting()
 * @generated
 */
public interface Mounting extends EObject {
	/**
	 * Returns the value of the '<em><b>Beds Rigid</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Beds Rigid</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBedsRigid(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_BedsRigid()
	 * @generated
	 */
	Answer getBedsRigid();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getBedsRigid <em>Beds Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Beds Rigid</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBedsRigid()
	 * @generated
	 */
	void setBedsRigid(Answer value);

	/**
	 * Returns the value of the '<em><b>Mounts Aligned</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mounts Aligned</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setMountsAligned(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_MountsAligned()
	 * @generated
	 */
	Answer getMountsAligned();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getMountsAligned <em>Mounts Aligned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mounts Aligned</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getMountsAligned()
	 * @generated
	 */
	void setMountsAligned(Answer value);

	/**
	 * Returns the value of the '<em><b>Clearance Around</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clearance Around</em>' attribute.
	 * @see #setClearanceAround(Length)
	 * @see garboard.model.GarboardPackage#getMounting_ClearanceAround()
	 * @generated
	 */
	Length getClearanceAround();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getClearanceAround <em>Clearance Around</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clearance Around</em>' attribute.
	 * @see #getClearanceAround()
	 * @generated
	 */
	void setClearanceAround(Length value);

	/**
	 * Returns the value of the '<em><b>Flexible Connections</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flexible Connections</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setFlexibleConnections(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_FlexibleConnections()
	 * @generated
	 */
	Answer getFlexibleConnections();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getFlexibleConnections <em>Flexible Connections</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flexible Connections</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getFlexibleConnections()
	 * @generated
	 */
	void setFlexibleConnections(Answer value);

	/**
	 * Returns the value of the '<em><b>Drip Tray</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Drip Tray</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDripTray(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_DripTray()
	 * @generated
	 */
	Answer getDripTray();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getDripTray <em>Drip Tray</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drip Tray</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDripTray()
	 * @generated
	 */
	void setDripTray(Answer value);

	/**
	 * Returns the value of the '<em><b>Access For Service</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Access For Service</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAccessForService(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_AccessForService()
	 * @generated
	 */
	Answer getAccessForService();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getAccessForService <em>Access For Service</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Access For Service</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAccessForService()
	 * @generated
	 */
	void setAccessForService(Answer value);

	/**
	 * Returns the value of the '<em><b>Bonding Conductor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bonding Conductor</em>' attribute.
	 * @see #setBondingConductor(String)
	 * @see garboard.model.GarboardPackage#getMounting_BondingConductor()
	 * @generated
	 */
	String getBondingConductor();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getBondingConductor <em>Bonding Conductor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bonding Conductor</em>' attribute.
	 * @see #getBondingConductor()
	 * @generated
	 */
	void setBondingConductor(String value);

	/**
	 * Returns the value of the '<em><b>Bonded To Common Ground</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bonded To Common Ground</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBondedToCommonGround(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_BondedToCommonGround()
	 * @generated
	 */
	Answer getBondedToCommonGround();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getBondedToCommonGround <em>Bonded To Common Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bonded To Common Ground</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBondedToCommonGround()
	 * @generated
	 */
	void setBondedToCommonGround(Answer value);

	/**
	 * Returns the value of the '<em><b>Common Negative Link</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Common Negative Link</em>' attribute.
	 * @see #setCommonNegativeLink(String)
	 * @see garboard.model.GarboardPackage#getMounting_CommonNegativeLink()
	 * @generated
	 */
	String getCommonNegativeLink();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getCommonNegativeLink <em>Common Negative Link</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Common Negative Link</em>' attribute.
	 * @see #getCommonNegativeLink()
	 * @generated
	 */
	void setCommonNegativeLink(String value);

	/**
	 * Returns the value of the '<em><b>Dc Negative Isolated</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dc Negative Isolated</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDcNegativeIsolated(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_DcNegativeIsolated()
	 * @generated
	 */
	Answer getDcNegativeIsolated();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getDcNegativeIsolated <em>Dc Negative Isolated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dc Negative Isolated</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDcNegativeIsolated()
	 * @generated
	 */
	void setDcNegativeIsolated(Answer value);

	/**
	 * Returns the value of the '<em><b>Installed Angle Fore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed Angle Fore</em>' attribute.
	 * @see #setInstalledAngleFore(Angle)
	 * @see garboard.model.GarboardPackage#getMounting_InstalledAngleFore()
	 * @generated
	 */
	Angle getInstalledAngleFore();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getInstalledAngleFore <em>Installed Angle Fore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed Angle Fore</em>' attribute.
	 * @see #getInstalledAngleFore()
	 * @generated
	 */
	void setInstalledAngleFore(Angle value);

	/**
	 * Returns the value of the '<em><b>Installed Angle Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Installed Angle Side</em>' attribute.
	 * @see #setInstalledAngleSide(Angle)
	 * @see garboard.model.GarboardPackage#getMounting_InstalledAngleSide()
	 * @generated
	 */
	Angle getInstalledAngleSide();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getInstalledAngleSide <em>Installed Angle Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed Angle Side</em>' attribute.
	 * @see #getInstalledAngleSide()
	 * @generated
	 */
	void setInstalledAngleSide(Angle value);

	/**
	 * Returns the value of the '<em><b>Height Above Bilge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Above Bilge</em>' attribute.
	 * @see #setHeightAboveBilge(Length)
	 * @see garboard.model.GarboardPackage#getMounting_HeightAboveBilge()
	 * @generated
	 */
	Length getHeightAboveBilge();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getHeightAboveBilge <em>Height Above Bilge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Above Bilge</em>' attribute.
	 * @see #getHeightAboveBilge()
	 * @generated
	 */
	void setHeightAboveBilge(Length value);

	/**
	 * Returns the value of the '<em><b>Anodes Fitted</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Anodes Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setAnodesFitted(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_AnodesFitted()
	 * @generated
	 */
	Answer getAnodesFitted();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getAnodesFitted <em>Anodes Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Anodes Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getAnodesFitted()
	 * @generated
	 */
	void setAnodesFitted(Answer value);

	/**
	 * Returns the value of the '<em><b>Labels Posted</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Labels Posted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLabelsPosted(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_LabelsPosted()
	 * @generated
	 */
	Answer getLabelsPosted();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getLabelsPosted <em>Labels Posted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labels Posted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLabelsPosted()
	 * @generated
	 */
	void setLabelsPosted(Answer value);

	/**
	 * Returns the value of the '<em><b>Rotating Parts Guarded</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rotating Parts Guarded</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setRotatingPartsGuarded(Answer)
	 * @see garboard.model.GarboardPackage#getMounting_RotatingPartsGuarded()
	 * @generated
	 */
	Answer getRotatingPartsGuarded();

	/**
	 * Sets the value of the '{@link garboard.model.Mounting#getRotatingPartsGuarded <em>Rotating Parts Guarded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rotating Parts Guarded</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getRotatingPartsGuarded()
	 * @generated
	 */
	void setRotatingPartsGuarded(Answer value);

} // Mounting
