/**
 */
package garboard.model;

import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Muffler</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.Muffler#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.Muffler#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.Muffler#getInletBore <em>Inlet Bore</em>}</li>
 *   <li>{@link garboard.model.Muffler#getOutletBore <em>Outlet Bore</em>}</li>
 *   <li>{@link garboard.model.Muffler#getVolumeToInlet <em>Volume To Inlet</em>}</li>
 *   <li>{@link garboard.model.Muffler#getResidueFraction <em>Residue Fraction</em>}</li>
 *   <li>{@link garboard.model.Muffler#getBottomHeight <em>Bottom Height</em>}</li>
 *   <li>{@link garboard.model.Muffler#getInletInvertHeight <em>Inlet Invert Height</em>}</li>
 *   <li>{@link garboard.model.Muffler#getDistanceFromEngine <em>Distance From Engine</em>}</li>
 *   <li>{@link garboard.model.Muffler#getLowestPoint <em>Lowest Point</em>}</li>
 *   <li>{@link garboard.model.Muffler#getMarked <em>Marked</em>}</li>
 *   <li>{@link garboard.model.Muffler#getDrainPlug <em>Drain Plug</em>}</li>
 *   <li>{@link garboard.model.Muffler#getDrainPosition <em>Drain Position</em>}</li>
 *   <li>{@link garboard.model.Muffler#getLevelAfterStopBelowInlet <em>Level After Stop Below Inlet</em>}</li>
 *   <li>{@link garboard.model.Muffler#getSupported <em>Supported</em>}</li>
 *   <li>{@link garboard.model.Muffler#getPressureLoss <em>Pressure Loss</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getMuffler()
 * @generated
 */
public interface Muffler extends EObject {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.MufflerKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.MufflerKind
	 * @see #setKind(MufflerKind)
	 * @see garboard.model.GarboardPackage#getMuffler_Kind()
	 * @generated
	 */
	MufflerKind getKind();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see garboard.model.MufflerKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(MufflerKind value);

	/**
	 * Returns the value of the '<em><b>Position</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Position</em>' containment reference.
	 * @see #setPosition(Point)
	 * @see garboard.model.GarboardPackage#getMuffler_Position()
	 * @generated
	 */
	Point getPosition();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getPosition <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' containment reference.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Point value);

	/**
	 * Returns the value of the '<em><b>Inlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inlet Bore</em>' attribute.
	 * @see #setInletBore(Length)
	 * @see garboard.model.GarboardPackage#getMuffler_InletBore()
	 * @generated
	 */
	Length getInletBore();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getInletBore <em>Inlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inlet Bore</em>' attribute.
	 * @see #getInletBore()
	 * @generated
	 */
	void setInletBore(Length value);

	/**
	 * Returns the value of the '<em><b>Outlet Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outlet Bore</em>' attribute.
	 * @see #setOutletBore(Length)
	 * @see garboard.model.GarboardPackage#getMuffler_OutletBore()
	 * @generated
	 */
	Length getOutletBore();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getOutletBore <em>Outlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outlet Bore</em>' attribute.
	 * @see #getOutletBore()
	 * @generated
	 */
	void setOutletBore(Length value);

	/**
	 * Returns the value of the '<em><b>Volume To Inlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Volume To Inlet</em>' attribute.
	 * @see #setVolumeToInlet(Volume)
	 * @see garboard.model.GarboardPackage#getMuffler_VolumeToInlet()
	 * @generated
	 */
	Volume getVolumeToInlet();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getVolumeToInlet <em>Volume To Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volume To Inlet</em>' attribute.
	 * @see #getVolumeToInlet()
	 * @generated
	 */
	void setVolumeToInlet(Volume value);

	/**
	 * Returns the value of the '<em><b>Residue Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residue Fraction</em>' attribute.
	 * @see #setResidueFraction(Ratio)
	 * @see garboard.model.GarboardPackage#getMuffler_ResidueFraction()
	 * @generated
	 */
	Ratio getResidueFraction();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getResidueFraction <em>Residue Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residue Fraction</em>' attribute.
	 * @see #getResidueFraction()
	 * @generated
	 */
	void setResidueFraction(Ratio value);

	/**
	 * Returns the value of the '<em><b>Bottom Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bottom Height</em>' attribute.
	 * @see #setBottomHeight(Length)
	 * @see garboard.model.GarboardPackage#getMuffler_BottomHeight()
	 * @generated
	 */
	Length getBottomHeight();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getBottomHeight <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bottom Height</em>' attribute.
	 * @see #getBottomHeight()
	 * @generated
	 */
	void setBottomHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Inlet Invert Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inlet Invert Height</em>' attribute.
	 * @see #setInletInvertHeight(Length)
	 * @see garboard.model.GarboardPackage#getMuffler_InletInvertHeight()
	 * @generated
	 */
	Length getInletInvertHeight();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getInletInvertHeight <em>Inlet Invert Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inlet Invert Height</em>' attribute.
	 * @see #getInletInvertHeight()
	 * @generated
	 */
	void setInletInvertHeight(Length value);

	/**
	 * Returns the value of the '<em><b>Distance From Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Distance From Engine</em>' attribute.
	 * @see #setDistanceFromEngine(Length)
	 * @see garboard.model.GarboardPackage#getMuffler_DistanceFromEngine()
	 * @generated
	 */
	Length getDistanceFromEngine();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getDistanceFromEngine <em>Distance From Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance From Engine</em>' attribute.
	 * @see #getDistanceFromEngine()
	 * @generated
	 */
	void setDistanceFromEngine(Length value);

	/**
	 * Returns the value of the '<em><b>Lowest Point</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lowest Point</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLowestPoint(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_LowestPoint()
	 * @generated
	 */
	Answer getLowestPoint();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getLowestPoint <em>Lowest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lowest Point</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLowestPoint()
	 * @generated
	 */
	void setLowestPoint(Answer value);

	/**
	 * Returns the value of the '<em><b>Marked</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setMarked(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_Marked()
	 * @generated
	 */
	Answer getMarked();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getMarked <em>Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Marked</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getMarked()
	 * @generated
	 */
	void setMarked(Answer value);

	/**
	 * Returns the value of the '<em><b>Drain Plug</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Drain Plug</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDrainPlug(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_DrainPlug()
	 * @generated
	 */
	Answer getDrainPlug();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getDrainPlug <em>Drain Plug</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drain Plug</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDrainPlug()
	 * @generated
	 */
	void setDrainPlug(Answer value);

	/**
	 * Returns the value of the '<em><b>Drain Position</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Drain Position</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDrainPosition(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_DrainPosition()
	 * @generated
	 */
	Answer getDrainPosition();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getDrainPosition <em>Drain Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drain Position</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDrainPosition()
	 * @generated
	 */
	void setDrainPosition(Answer value);

	/**
	 * Returns the value of the '<em><b>Level After Stop Below Inlet</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Level After Stop Below Inlet</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setLevelAfterStopBelowInlet(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_LevelAfterStopBelowInlet()
	 * @generated
	 */
	Answer getLevelAfterStopBelowInlet();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getLevelAfterStopBelowInlet <em>Level After Stop Below Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level After Stop Below Inlet</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getLevelAfterStopBelowInlet()
	 * @generated
	 */
	void setLevelAfterStopBelowInlet(Answer value);

	/**
	 * Returns the value of the '<em><b>Supported</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supported</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setSupported(Answer)
	 * @see garboard.model.GarboardPackage#getMuffler_Supported()
	 * @generated
	 */
	Answer getSupported();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getSupported <em>Supported</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supported</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getSupported()
	 * @generated
	 */
	void setSupported(Answer value);

	/**
	 * Returns the value of the '<em><b>Pressure Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pressure Loss</em>' attribute.
	 * @see #setPressureLoss(PressureDifference)
	 * @see garboard.model.GarboardPackage#getMuffler_PressureLoss()
	 * @generated
	 */
	PressureDifference getPressureLoss();

	/**
	 * Sets the value of the '{@link garboard.model.Muffler#getPressureLoss <em>Pressure Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pressure Loss</em>' attribute.
	 * @see #getPressureLoss()
	 * @generated
	 */
	void setPressureLoss(PressureDifference value);

} // Muffler
