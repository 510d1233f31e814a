/**
 */
package garboard.model;

import garboard.quantity.Length;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Outlet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustOutlet#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getInsideBottom <em>Inside Bottom</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getAntiSurge <em>Anti Surge</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getClosedByValve <em>Closed By Valve</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getUnderSwimPlatform <em>Under Swim Platform</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getNearOpenings <em>Near Openings</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getDistanceToOpening <em>Distance To Opening</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getWaterVisible <em>Water Visible</em>}</li>
 *   <li>{@link garboard.model.ExhaustOutlet#getMaterial <em>Material</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustOutlet()
 * @generated
 */
public interface ExhaustOutlet extends EObject {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.OutletPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see garboard.model.OutletPlace
	 * @see #setPlace(OutletPlace)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_Place()
	 * @generated
	 */
	OutletPlace getPlace();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see garboard.model.OutletPlace
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(OutletPlace value);

	/**
	 * Returns the value of the '<em><b>Inside Bottom</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inside Bottom</em>' containment reference.
	 * @see #setInsideBottom(Point)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_InsideBottom()
	 * @generated
	 */
	Point getInsideBottom();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getInsideBottom <em>Inside Bottom</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside Bottom</em>' containment reference.
	 * @see #getInsideBottom()
	 * @generated
	 */
	void setInsideBottom(Point value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Length)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_Bore()
	 * @generated
	 */
	Length getBore();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Length value);

	/**
	 * Returns the value of the '<em><b>Anti Surge</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.AntiSurge}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Anti Surge</em>' attribute.
	 * @see garboard.model.AntiSurge
	 * @see #setAntiSurge(AntiSurge)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_AntiSurge()
	 * @generated
	 */
	AntiSurge getAntiSurge();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getAntiSurge <em>Anti Surge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Anti Surge</em>' attribute.
	 * @see garboard.model.AntiSurge
	 * @see #getAntiSurge()
	 * @generated
	 */
	void setAntiSurge(AntiSurge value);

	/**
	 * Returns the value of the '<em><b>Closed By Valve</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Closed By Valve</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setClosedByValve(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_ClosedByValve()
	 * @generated
	 */
	Answer getClosedByValve();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getClosedByValve <em>Closed By Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Closed By Valve</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getClosedByValve()
	 * @generated
	 */
	void setClosedByValve(Answer value);

	/**
	 * Returns the value of the '<em><b>Under Swim Platform</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Under Swim Platform</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setUnderSwimPlatform(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_UnderSwimPlatform()
	 * @generated
	 */
	Answer getUnderSwimPlatform();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getUnderSwimPlatform <em>Under Swim Platform</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Under Swim Platform</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getUnderSwimPlatform()
	 * @generated
	 */
	void setUnderSwimPlatform(Answer value);

	/**
	 * Returns the value of the '<em><b>Near Openings</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Near Openings</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setNearOpenings(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_NearOpenings()
	 * @generated
	 */
	Answer getNearOpenings();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getNearOpenings <em>Near Openings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Near Openings</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getNearOpenings()
	 * @generated
	 */
	void setNearOpenings(Answer value);

	/**
	 * Returns the value of the '<em><b>Distance To Opening</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Distance To Opening</em>' attribute.
	 * @see #setDistanceToOpening(Length)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_DistanceToOpening()
	 * @generated
	 */
	Length getDistanceToOpening();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getDistanceToOpening <em>Distance To Opening</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance To Opening</em>' attribute.
	 * @see #getDistanceToOpening()
	 * @generated
	 */
	void setDistanceToOpening(Length value);

	/**
	 * Returns the value of the '<em><b>Water Visible</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Visible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterVisible(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_WaterVisible()
	 * @generated
	 */
	Answer getWaterVisible();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getWaterVisible <em>Water Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Visible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterVisible()
	 * @generated
	 */
	void setWaterVisible(Answer value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.FittingMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #setMaterial(FittingMaterial)
	 * @see garboard.model.GarboardPackage#getExhaustOutlet_Material()
	 * @generated
	 */
	FittingMaterial getMaterial();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustOutlet#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see garboard.model.FittingMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(FittingMaterial value);

} // ExhaustOutlet
