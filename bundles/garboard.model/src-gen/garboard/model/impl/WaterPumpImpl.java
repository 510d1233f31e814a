/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.model.WaterPump;

import garboard.quantity.Length;
import garboard.quantity.VolumeFlow;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Water Pump</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getInletBore <em>Inlet Bore</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getOutletBore <em>Outlet Bore</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getRatedFlow <em>Rated Flow</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getSelfPriming <em>Self Priming</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getImpellerPiecesMissing <em>Impeller Pieces Missing</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getImpellerPiecesFound <em>Impeller Pieces Found</em>}</li>
 *   <li>{@link garboard.model.impl.WaterPumpImpl#getImpellerChangedOn <em>Impeller Changed On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaterPumpImpl extends MinimalEObjectImpl.Container implements WaterPump {
	/**
	 * The cached value of the '{@link #getPosition() <em>Position</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPosition()
	 * @generated
	 * @ordered
	 */
	protected Point position;

	/**
	 * The default value of the '{@link #getInletBore() <em>Inlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInletBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length INLET_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInletBore() <em>Inlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInletBore()
	 * @generated
	 * @ordered
	 */
	protected Length inletBore = INLET_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutletBore() <em>Outlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutletBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length OUTLET_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutletBore() <em>Outlet Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutletBore()
	 * @generated
	 * @ordered
	 */
	protected Length outletBore = OUTLET_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedFlow() <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected static final VolumeFlow RATED_FLOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedFlow() <em>Rated Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedFlow()
	 * @generated
	 * @ordered
	 */
	protected VolumeFlow ratedFlow = RATED_FLOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getSelfPriming() <em>Self Priming</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSelfPriming()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SELF_PRIMING_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSelfPriming() <em>Self Priming</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSelfPriming()
	 * @generated
	 * @ordered
	 */
	protected Answer selfPriming = SELF_PRIMING_EDEFAULT;

	/**
	 * The default value of the '{@link #getImpellerPiecesMissing() <em>Impeller Pieces Missing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerPiecesMissing()
	 * @generated
	 * @ordered
	 */
	protected static final Integer IMPELLER_PIECES_MISSING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getImpellerPiecesMissing() <em>Impeller Pieces Missing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerPiecesMissing()
	 * @generated
	 * @ordered
	 */
	protected Integer impellerPiecesMissing = IMPELLER_PIECES_MISSING_EDEFAULT;

	/**
	 * The default value of the '{@link #getImpellerPiecesFound() <em>Impeller Pieces Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerPiecesFound()
	 * @generated
	 * @ordered
	 */
	protected static final Integer IMPELLER_PIECES_FOUND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getImpellerPiecesFound() <em>Impeller Pieces Found</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerPiecesFound()
	 * @generated
	 * @ordered
	 */
	protected Integer impellerPiecesFound = IMPELLER_PIECES_FOUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getImpellerChangedOn() <em>Impeller Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerChangedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate IMPELLER_CHANGED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getImpellerChangedOn() <em>Impeller Changed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImpellerChangedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate impellerChangedOn = IMPELLER_CHANGED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WaterPumpImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.WATER_PUMP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getPosition() {
		return position;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPosition(Point newPosition, NotificationChain msgs) {
		Point oldPosition = position;
		position = newPosition;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__POSITION, oldPosition, newPosition);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Point newPosition) {
		if (newPosition != position) {
			NotificationChain msgs = null;
			if (position != null)
				msgs = ((InternalEObject)position).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.WATER_PUMP__POSITION, null, msgs);
			if (newPosition != null)
				msgs = ((InternalEObject)newPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.WATER_PUMP__POSITION, null, msgs);
			msgs = basicSetPosition(newPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__POSITION, newPosition, newPosition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getInletBore() {
		return inletBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInletBore(Length newInletBore) {
		Length oldInletBore = inletBore;
		inletBore = newInletBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__INLET_BORE, oldInletBore, inletBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getOutletBore() {
		return outletBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutletBore(Length newOutletBore) {
		Length oldOutletBore = outletBore;
		outletBore = newOutletBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__OUTLET_BORE, oldOutletBore, outletBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VolumeFlow getRatedFlow() {
		return ratedFlow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedFlow(VolumeFlow newRatedFlow) {
		VolumeFlow oldRatedFlow = ratedFlow;
		ratedFlow = newRatedFlow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__RATED_FLOW, oldRatedFlow, ratedFlow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSelfPriming() {
		return selfPriming;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSelfPriming(Answer newSelfPriming) {
		Answer oldSelfPriming = selfPriming;
		selfPriming = newSelfPriming == null ? SELF_PRIMING_EDEFAULT : newSelfPriming;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__SELF_PRIMING, oldSelfPriming, selfPriming));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getImpellerPiecesMissing() {
		return impellerPiecesMissing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImpellerPiecesMissing(Integer newImpellerPiecesMissing) {
		Integer oldImpellerPiecesMissing = impellerPiecesMissing;
		impellerPiecesMissing = newImpellerPiecesMissing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__IMPELLER_PIECES_MISSING, oldImpellerPiecesMissing, impellerPiecesMissing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getImpellerPiecesFound() {
		return impellerPiecesFound;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImpellerPiecesFound(Integer newImpellerPiecesFound) {
		Integer oldImpellerPiecesFound = impellerPiecesFound;
		impellerPiecesFound = newImpellerPiecesFound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__IMPELLER_PIECES_FOUND, oldImpellerPiecesFound, impellerPiecesFound));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getImpellerChangedOn() {
		return impellerChangedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImpellerChangedOn(LocalDate newImpellerChangedOn) {
		LocalDate oldImpellerChangedOn = impellerChangedOn;
		impellerChangedOn = newImpellerChangedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_PUMP__IMPELLER_CHANGED_ON, oldImpellerChangedOn, impellerChangedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.WATER_PUMP__POSITION:
				return basicSetPosition(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.WATER_PUMP__POSITION:
				return getPosition();
			case GarboardPackage.WATER_PUMP__INLET_BORE:
				return getInletBore();
			case GarboardPackage.WATER_PUMP__OUTLET_BORE:
				return getOutletBore();
			case GarboardPackage.WATER_PUMP__RATED_FLOW:
				return getRatedFlow();
			case GarboardPackage.WATER_PUMP__SELF_PRIMING:
				return getSelfPriming();
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_MISSING:
				return getImpellerPiecesMissing();
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_FOUND:
				return getImpellerPiecesFound();
			case GarboardPackage.WATER_PUMP__IMPELLER_CHANGED_ON:
				return getImpellerChangedOn();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.WATER_PUMP__POSITION:
				setPosition((Point)newValue);
				return;
			case GarboardPackage.WATER_PUMP__INLET_BORE:
				setInletBore((Length)newValue);
				return;
			case GarboardPackage.WATER_PUMP__OUTLET_BORE:
				setOutletBore((Length)newValue);
				return;
			case GarboardPackage.WATER_PUMP__RATED_FLOW:
				setRatedFlow((VolumeFlow)newValue);
				return;
			case GarboardPackage.WATER_PUMP__SELF_PRIMING:
				setSelfPriming((Answer)newValue);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_MISSING:
				setImpellerPiecesMissing((Integer)newValue);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_FOUND:
				setImpellerPiecesFound((Integer)newValue);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_CHANGED_ON:
				setImpellerChangedOn((LocalDate)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.WATER_PUMP__POSITION:
				setPosition((Point)null);
				return;
			case GarboardPackage.WATER_PUMP__INLET_BORE:
				setInletBore(INLET_BORE_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__OUTLET_BORE:
				setOutletBore(OUTLET_BORE_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__RATED_FLOW:
				setRatedFlow(RATED_FLOW_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__SELF_PRIMING:
				setSelfPriming(SELF_PRIMING_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_MISSING:
				setImpellerPiecesMissing(IMPELLER_PIECES_MISSING_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_FOUND:
				setImpellerPiecesFound(IMPELLER_PIECES_FOUND_EDEFAULT);
				return;
			case GarboardPackage.WATER_PUMP__IMPELLER_CHANGED_ON:
				setImpellerChangedOn(IMPELLER_CHANGED_ON_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.WATER_PUMP__POSITION:
				return position != null;
			case GarboardPackage.WATER_PUMP__INLET_BORE:
				return INLET_BORE_EDEFAULT == null ? inletBore != null : !INLET_BORE_EDEFAULT.equals(inletBore);
			case GarboardPackage.WATER_PUMP__OUTLET_BORE:
				return OUTLET_BORE_EDEFAULT == null ? outletBore != null : !OUTLET_BORE_EDEFAULT.equals(outletBore);
			case GarboardPackage.WATER_PUMP__RATED_FLOW:
				return RATED_FLOW_EDEFAULT == null ? ratedFlow != null : !RATED_FLOW_EDEFAULT.equals(ratedFlow);
			case GarboardPackage.WATER_PUMP__SELF_PRIMING:
				return selfPriming != SELF_PRIMING_EDEFAULT;
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_MISSING:
				return IMPELLER_PIECES_MISSING_EDEFAULT == null ? impellerPiecesMissing != null : !IMPELLER_PIECES_MISSING_EDEFAULT.equals(impellerPiecesMissing);
			case GarboardPackage.WATER_PUMP__IMPELLER_PIECES_FOUND:
				return IMPELLER_PIECES_FOUND_EDEFAULT == null ? impellerPiecesFound != null : !IMPELLER_PIECES_FOUND_EDEFAULT.equals(impellerPiecesFound);
			case GarboardPackage.WATER_PUMP__IMPELLER_CHANGED_ON:
				return IMPELLER_CHANGED_ON_EDEFAULT == null ? impellerChangedOn != null : !IMPELLER_CHANGED_ON_EDEFAULT.equals(impellerChangedOn);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (inletBore: ");
		result.append(inletBore);
		result.append(", outletBore: ");
		result.append(outletBore);
		result.append(", ratedFlow: ");
		result.append(ratedFlow);
		result.append(", selfPriming: ");
		result.append(selfPriming);
		result.append(", impellerPiecesMissing: ");
		result.append(impellerPiecesMissing);
		result.append(", impellerPiecesFound: ");
		result.append(impellerPiecesFound);
		result.append(", impellerChangedOn: ");
		result.append(impellerChangedOn);
		result.append(')');
		return result.toString();
	}

} //WaterPumpImpl
