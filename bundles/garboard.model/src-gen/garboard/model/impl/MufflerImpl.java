/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Muffler;
import garboard.model.MufflerKind;
import garboard.model.Point;

import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Muffler</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.MufflerImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getInletBore <em>Inlet Bore</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getOutletBore <em>Outlet Bore</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getVolumeToInlet <em>Volume To Inlet</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getResidueFraction <em>Residue Fraction</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getBottomHeight <em>Bottom Height</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getInletInvertHeight <em>Inlet Invert Height</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getDistanceFromEngine <em>Distance From Engine</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getLowestPoint <em>Lowest Point</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getMarked <em>Marked</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getDrainPlug <em>Drain Plug</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getDrainPosition <em>Drain Position</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getLevelAfterStopBelowInlet <em>Level After Stop Below Inlet</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getSupported <em>Supported</em>}</li>
 *   <li>{@link garboard.model.impl.MufflerImpl#getPressureLoss <em>Pressure Loss</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MufflerImpl extends MinimalEObjectImpl.Container implements Muffler {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final MufflerKind KIND_EDEFAULT = MufflerKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected MufflerKind kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getVolumeToInlet() <em>Volume To Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVolumeToInlet()
	 * @generated
	 * @ordered
	 */
	protected static final Volume VOLUME_TO_INLET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVolumeToInlet() <em>Volume To Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVolumeToInlet()
	 * @generated
	 * @ordered
	 */
	protected Volume volumeToInlet = VOLUME_TO_INLET_EDEFAULT;

	/**
	 * The default value of the '{@link #getResidueFraction() <em>Residue Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidueFraction()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio RESIDUE_FRACTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getResidueFraction() <em>Residue Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidueFraction()
	 * @generated
	 * @ordered
	 */
	protected Ratio residueFraction = RESIDUE_FRACTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getBottomHeight() <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length BOTTOM_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBottomHeight() <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomHeight()
	 * @generated
	 * @ordered
	 */
	protected Length bottomHeight = BOTTOM_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getInletInvertHeight() <em>Inlet Invert Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInletInvertHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length INLET_INVERT_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInletInvertHeight() <em>Inlet Invert Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInletInvertHeight()
	 * @generated
	 * @ordered
	 */
	protected Length inletInvertHeight = INLET_INVERT_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDistanceFromEngine() <em>Distance From Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceFromEngine()
	 * @generated
	 * @ordered
	 */
	protected static final Length DISTANCE_FROM_ENGINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistanceFromEngine() <em>Distance From Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceFromEngine()
	 * @generated
	 * @ordered
	 */
	protected Length distanceFromEngine = DISTANCE_FROM_ENGINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLowestPoint() <em>Lowest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestPoint()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LOWEST_POINT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLowestPoint() <em>Lowest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLowestPoint()
	 * @generated
	 * @ordered
	 */
	protected Answer lowestPoint = LOWEST_POINT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarked() <em>Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer MARKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getMarked() <em>Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarked()
	 * @generated
	 * @ordered
	 */
	protected Answer marked = MARKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getDrainPlug() <em>Drain Plug</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrainPlug()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DRAIN_PLUG_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDrainPlug() <em>Drain Plug</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrainPlug()
	 * @generated
	 * @ordered
	 */
	protected Answer drainPlug = DRAIN_PLUG_EDEFAULT;

	/**
	 * The default value of the '{@link #getDrainPosition() <em>Drain Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrainPosition()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DRAIN_POSITION_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDrainPosition() <em>Drain Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDrainPosition()
	 * @generated
	 * @ordered
	 */
	protected Answer drainPosition = DRAIN_POSITION_EDEFAULT;

	/**
	 * The default value of the '{@link #getLevelAfterStopBelowInlet() <em>Level After Stop Below Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevelAfterStopBelowInlet()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEVEL_AFTER_STOP_BELOW_INLET_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLevelAfterStopBelowInlet() <em>Level After Stop Below Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevelAfterStopBelowInlet()
	 * @generated
	 * @ordered
	 */
	protected Answer levelAfterStopBelowInlet = LEVEL_AFTER_STOP_BELOW_INLET_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupported() <em>Supported</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupported()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SUPPORTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSupported() <em>Supported</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupported()
	 * @generated
	 * @ordered
	 */
	protected Answer supported = SUPPORTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getPressureLoss() <em>Pressure Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressureLoss()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference PRESSURE_LOSS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPressureLoss() <em>Pressure Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressureLoss()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference pressureLoss = PRESSURE_LOSS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MufflerImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.MUFFLER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MufflerKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(MufflerKind newKind) {
		MufflerKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__KIND, oldKind, kind));
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__POSITION, oldPosition, newPosition);
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
				msgs = ((InternalEObject)position).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.MUFFLER__POSITION, null, msgs);
			if (newPosition != null)
				msgs = ((InternalEObject)newPosition).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.MUFFLER__POSITION, null, msgs);
			msgs = basicSetPosition(newPosition, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__POSITION, newPosition, newPosition));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__INLET_BORE, oldInletBore, inletBore));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__OUTLET_BORE, oldOutletBore, outletBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getVolumeToInlet() {
		return volumeToInlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolumeToInlet(Volume newVolumeToInlet) {
		Volume oldVolumeToInlet = volumeToInlet;
		volumeToInlet = newVolumeToInlet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__VOLUME_TO_INLET, oldVolumeToInlet, volumeToInlet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getResidueFraction() {
		return residueFraction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidueFraction(Ratio newResidueFraction) {
		Ratio oldResidueFraction = residueFraction;
		residueFraction = newResidueFraction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__RESIDUE_FRACTION, oldResidueFraction, residueFraction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBottomHeight() {
		return bottomHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBottomHeight(Length newBottomHeight) {
		Length oldBottomHeight = bottomHeight;
		bottomHeight = newBottomHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__BOTTOM_HEIGHT, oldBottomHeight, bottomHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getInletInvertHeight() {
		return inletInvertHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInletInvertHeight(Length newInletInvertHeight) {
		Length oldInletInvertHeight = inletInvertHeight;
		inletInvertHeight = newInletInvertHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__INLET_INVERT_HEIGHT, oldInletInvertHeight, inletInvertHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getDistanceFromEngine() {
		return distanceFromEngine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistanceFromEngine(Length newDistanceFromEngine) {
		Length oldDistanceFromEngine = distanceFromEngine;
		distanceFromEngine = newDistanceFromEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__DISTANCE_FROM_ENGINE, oldDistanceFromEngine, distanceFromEngine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLowestPoint() {
		return lowestPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLowestPoint(Answer newLowestPoint) {
		Answer oldLowestPoint = lowestPoint;
		lowestPoint = newLowestPoint == null ? LOWEST_POINT_EDEFAULT : newLowestPoint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__LOWEST_POINT, oldLowestPoint, lowestPoint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getMarked() {
		return marked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarked(Answer newMarked) {
		Answer oldMarked = marked;
		marked = newMarked == null ? MARKED_EDEFAULT : newMarked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__MARKED, oldMarked, marked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDrainPlug() {
		return drainPlug;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrainPlug(Answer newDrainPlug) {
		Answer oldDrainPlug = drainPlug;
		drainPlug = newDrainPlug == null ? DRAIN_PLUG_EDEFAULT : newDrainPlug;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__DRAIN_PLUG, oldDrainPlug, drainPlug));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDrainPosition() {
		return drainPosition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrainPosition(Answer newDrainPosition) {
		Answer oldDrainPosition = drainPosition;
		drainPosition = newDrainPosition == null ? DRAIN_POSITION_EDEFAULT : newDrainPosition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__DRAIN_POSITION, oldDrainPosition, drainPosition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLevelAfterStopBelowInlet() {
		return levelAfterStopBelowInlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevelAfterStopBelowInlet(Answer newLevelAfterStopBelowInlet) {
		Answer oldLevelAfterStopBelowInlet = levelAfterStopBelowInlet;
		levelAfterStopBelowInlet = newLevelAfterStopBelowInlet == null ? LEVEL_AFTER_STOP_BELOW_INLET_EDEFAULT : newLevelAfterStopBelowInlet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET, oldLevelAfterStopBelowInlet, levelAfterStopBelowInlet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSupported() {
		return supported;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupported(Answer newSupported) {
		Answer oldSupported = supported;
		supported = newSupported == null ? SUPPORTED_EDEFAULT : newSupported;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__SUPPORTED, oldSupported, supported));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getPressureLoss() {
		return pressureLoss;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressureLoss(PressureDifference newPressureLoss) {
		PressureDifference oldPressureLoss = pressureLoss;
		pressureLoss = newPressureLoss;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.MUFFLER__PRESSURE_LOSS, oldPressureLoss, pressureLoss));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.MUFFLER__POSITION:
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
			case GarboardPackage.MUFFLER__KIND:
				return getKind();
			case GarboardPackage.MUFFLER__POSITION:
				return getPosition();
			case GarboardPackage.MUFFLER__INLET_BORE:
				return getInletBore();
			case GarboardPackage.MUFFLER__OUTLET_BORE:
				return getOutletBore();
			case GarboardPackage.MUFFLER__VOLUME_TO_INLET:
				return getVolumeToInlet();
			case GarboardPackage.MUFFLER__RESIDUE_FRACTION:
				return getResidueFraction();
			case GarboardPackage.MUFFLER__BOTTOM_HEIGHT:
				return getBottomHeight();
			case GarboardPackage.MUFFLER__INLET_INVERT_HEIGHT:
				return getInletInvertHeight();
			case GarboardPackage.MUFFLER__DISTANCE_FROM_ENGINE:
				return getDistanceFromEngine();
			case GarboardPackage.MUFFLER__LOWEST_POINT:
				return getLowestPoint();
			case GarboardPackage.MUFFLER__MARKED:
				return getMarked();
			case GarboardPackage.MUFFLER__DRAIN_PLUG:
				return getDrainPlug();
			case GarboardPackage.MUFFLER__DRAIN_POSITION:
				return getDrainPosition();
			case GarboardPackage.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET:
				return getLevelAfterStopBelowInlet();
			case GarboardPackage.MUFFLER__SUPPORTED:
				return getSupported();
			case GarboardPackage.MUFFLER__PRESSURE_LOSS:
				return getPressureLoss();
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
			case GarboardPackage.MUFFLER__KIND:
				setKind((MufflerKind)newValue);
				return;
			case GarboardPackage.MUFFLER__POSITION:
				setPosition((Point)newValue);
				return;
			case GarboardPackage.MUFFLER__INLET_BORE:
				setInletBore((Length)newValue);
				return;
			case GarboardPackage.MUFFLER__OUTLET_BORE:
				setOutletBore((Length)newValue);
				return;
			case GarboardPackage.MUFFLER__VOLUME_TO_INLET:
				setVolumeToInlet((Volume)newValue);
				return;
			case GarboardPackage.MUFFLER__RESIDUE_FRACTION:
				setResidueFraction((Ratio)newValue);
				return;
			case GarboardPackage.MUFFLER__BOTTOM_HEIGHT:
				setBottomHeight((Length)newValue);
				return;
			case GarboardPackage.MUFFLER__INLET_INVERT_HEIGHT:
				setInletInvertHeight((Length)newValue);
				return;
			case GarboardPackage.MUFFLER__DISTANCE_FROM_ENGINE:
				setDistanceFromEngine((Length)newValue);
				return;
			case GarboardPackage.MUFFLER__LOWEST_POINT:
				setLowestPoint((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__MARKED:
				setMarked((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__DRAIN_PLUG:
				setDrainPlug((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__DRAIN_POSITION:
				setDrainPosition((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET:
				setLevelAfterStopBelowInlet((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__SUPPORTED:
				setSupported((Answer)newValue);
				return;
			case GarboardPackage.MUFFLER__PRESSURE_LOSS:
				setPressureLoss((PressureDifference)newValue);
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
			case GarboardPackage.MUFFLER__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__POSITION:
				setPosition((Point)null);
				return;
			case GarboardPackage.MUFFLER__INLET_BORE:
				setInletBore(INLET_BORE_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__OUTLET_BORE:
				setOutletBore(OUTLET_BORE_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__VOLUME_TO_INLET:
				setVolumeToInlet(VOLUME_TO_INLET_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__RESIDUE_FRACTION:
				setResidueFraction(RESIDUE_FRACTION_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__BOTTOM_HEIGHT:
				setBottomHeight(BOTTOM_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__INLET_INVERT_HEIGHT:
				setInletInvertHeight(INLET_INVERT_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__DISTANCE_FROM_ENGINE:
				setDistanceFromEngine(DISTANCE_FROM_ENGINE_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__LOWEST_POINT:
				setLowestPoint(LOWEST_POINT_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__MARKED:
				setMarked(MARKED_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__DRAIN_PLUG:
				setDrainPlug(DRAIN_PLUG_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__DRAIN_POSITION:
				setDrainPosition(DRAIN_POSITION_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET:
				setLevelAfterStopBelowInlet(LEVEL_AFTER_STOP_BELOW_INLET_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__SUPPORTED:
				setSupported(SUPPORTED_EDEFAULT);
				return;
			case GarboardPackage.MUFFLER__PRESSURE_LOSS:
				setPressureLoss(PRESSURE_LOSS_EDEFAULT);
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
			case GarboardPackage.MUFFLER__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.MUFFLER__POSITION:
				return position != null;
			case GarboardPackage.MUFFLER__INLET_BORE:
				return INLET_BORE_EDEFAULT == null ? inletBore != null : !INLET_BORE_EDEFAULT.equals(inletBore);
			case GarboardPackage.MUFFLER__OUTLET_BORE:
				return OUTLET_BORE_EDEFAULT == null ? outletBore != null : !OUTLET_BORE_EDEFAULT.equals(outletBore);
			case GarboardPackage.MUFFLER__VOLUME_TO_INLET:
				return VOLUME_TO_INLET_EDEFAULT == null ? volumeToInlet != null : !VOLUME_TO_INLET_EDEFAULT.equals(volumeToInlet);
			case GarboardPackage.MUFFLER__RESIDUE_FRACTION:
				return RESIDUE_FRACTION_EDEFAULT == null ? residueFraction != null : !RESIDUE_FRACTION_EDEFAULT.equals(residueFraction);
			case GarboardPackage.MUFFLER__BOTTOM_HEIGHT:
				return BOTTOM_HEIGHT_EDEFAULT == null ? bottomHeight != null : !BOTTOM_HEIGHT_EDEFAULT.equals(bottomHeight);
			case GarboardPackage.MUFFLER__INLET_INVERT_HEIGHT:
				return INLET_INVERT_HEIGHT_EDEFAULT == null ? inletInvertHeight != null : !INLET_INVERT_HEIGHT_EDEFAULT.equals(inletInvertHeight);
			case GarboardPackage.MUFFLER__DISTANCE_FROM_ENGINE:
				return DISTANCE_FROM_ENGINE_EDEFAULT == null ? distanceFromEngine != null : !DISTANCE_FROM_ENGINE_EDEFAULT.equals(distanceFromEngine);
			case GarboardPackage.MUFFLER__LOWEST_POINT:
				return lowestPoint != LOWEST_POINT_EDEFAULT;
			case GarboardPackage.MUFFLER__MARKED:
				return marked != MARKED_EDEFAULT;
			case GarboardPackage.MUFFLER__DRAIN_PLUG:
				return drainPlug != DRAIN_PLUG_EDEFAULT;
			case GarboardPackage.MUFFLER__DRAIN_POSITION:
				return drainPosition != DRAIN_POSITION_EDEFAULT;
			case GarboardPackage.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET:
				return levelAfterStopBelowInlet != LEVEL_AFTER_STOP_BELOW_INLET_EDEFAULT;
			case GarboardPackage.MUFFLER__SUPPORTED:
				return supported != SUPPORTED_EDEFAULT;
			case GarboardPackage.MUFFLER__PRESSURE_LOSS:
				return PRESSURE_LOSS_EDEFAULT == null ? pressureLoss != null : !PRESSURE_LOSS_EDEFAULT.equals(pressureLoss);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", inletBore: ");
		result.append(inletBore);
		result.append(", outletBore: ");
		result.append(outletBore);
		result.append(", volumeToInlet: ");
		result.append(volumeToInlet);
		result.append(", residueFraction: ");
		result.append(residueFraction);
		result.append(", bottomHeight: ");
		result.append(bottomHeight);
		result.append(", inletInvertHeight: ");
		result.append(inletInvertHeight);
		result.append(", distanceFromEngine: ");
		result.append(distanceFromEngine);
		result.append(", lowestPoint: ");
		result.append(lowestPoint);
		result.append(", marked: ");
		result.append(marked);
		result.append(", drainPlug: ");
		result.append(drainPlug);
		result.append(", drainPosition: ");
		result.append(drainPosition);
		result.append(", levelAfterStopBelowInlet: ");
		result.append(levelAfterStopBelowInlet);
		result.append(", supported: ");
		result.append(supported);
		result.append(", pressureLoss: ");
		result.append(pressureLoss);
		result.append(')');
		return result.toString();
	}

} //MufflerImpl
