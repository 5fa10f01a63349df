/**
 */
package org.flexwright.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import org.flexwright.model.Batch;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Batch</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getWanted <em>Wanted</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getSpares <em>Spares</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getCreatedAt <em>Created At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getNeededBy <em>Needed By</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getClosedAt <em>Closed At</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getRejectLimit <em>Reject Limit</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getPots <em>Pots</em>}</li>
 *   <li>{@link org.flexwright.model.impl.BatchImpl#getStartAt <em>Start At</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BatchImpl extends EntryImpl implements Batch {
	/**
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRecipe() <em>Recipe</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecipe()
	 * @generated
	 * @ordered
	 */
	protected Recipe recipe;

	/**
	 * The default value of the '{@link #getWanted() <em>Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWanted()
	 * @generated
	 * @ordered
	 */
	protected static final Integer WANTED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWanted() <em>Wanted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWanted()
	 * @generated
	 * @ordered
	 */
	protected Integer wanted = WANTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpares() <em>Spares</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpares()
	 * @generated
	 * @ordered
	 */
	protected static final Integer SPARES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpares() <em>Spares</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpares()
	 * @generated
	 * @ordered
	 */
	protected Integer spares = SPARES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCreatedAt() <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant CREATED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCreatedAt() <em>Created At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant createdAt = CREATED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getNeededBy() <em>Needed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeededBy()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate NEEDED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNeededBy() <em>Needed By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeededBy()
	 * @generated
	 * @ordered
	 */
	protected LocalDate neededBy = NEEDED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getClosedAt() <em>Closed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosedAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant CLOSED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClosedAt() <em>Closed At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClosedAt()
	 * @generated
	 * @ordered
	 */
	protected Instant closedAt = CLOSED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getRejectLimit() <em>Reject Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Integer REJECT_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRejectLimit() <em>Reject Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRejectLimit()
	 * @generated
	 * @ordered
	 */
	protected Integer rejectLimit = REJECT_LIMIT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPots() <em>Pots</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPots()
	 * @generated
	 * @ordered
	 */
	protected EList<Trial> pots;

	/**
	 * The default value of the '{@link #getStartAt() <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartAt()
	 * @generated
	 * @ordered
	 */
	protected static final Instant START_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStartAt() <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartAt()
	 * @generated
	 * @ordered
	 */
	protected Instant startAt = START_AT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BatchImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.BATCH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode() {
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode) {
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Recipe getRecipe() {
		if (recipe != null && recipe.eIsProxy()) {
			InternalEObject oldRecipe = (InternalEObject)recipe;
			recipe = (Recipe)eResolveProxy(oldRecipe);
			if (recipe != oldRecipe) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.BATCH__RECIPE, oldRecipe, recipe));
			}
		}
		return recipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Recipe basicGetRecipe() {
		return recipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecipe(Recipe newRecipe) {
		Recipe oldRecipe = recipe;
		recipe = newRecipe;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__RECIPE, oldRecipe, recipe));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getWanted() {
		return wanted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWanted(Integer newWanted) {
		Integer oldWanted = wanted;
		wanted = newWanted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__WANTED, oldWanted, wanted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getSpares() {
		return spares;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpares(Integer newSpares) {
		Integer oldSpares = spares;
		spares = newSpares;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__SPARES, oldSpares, spares));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getCreatedAt() {
		return createdAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCreatedAt(Instant newCreatedAt) {
		Instant oldCreatedAt = createdAt;
		createdAt = newCreatedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__CREATED_AT, oldCreatedAt, createdAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getNeededBy() {
		return neededBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeededBy(LocalDate newNeededBy) {
		LocalDate oldNeededBy = neededBy;
		neededBy = newNeededBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__NEEDED_BY, oldNeededBy, neededBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getClosedAt() {
		return closedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClosedAt(Instant newClosedAt) {
		Instant oldClosedAt = closedAt;
		closedAt = newClosedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__CLOSED_AT, oldClosedAt, closedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getRejectLimit() {
		return rejectLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRejectLimit(Integer newRejectLimit) {
		Integer oldRejectLimit = rejectLimit;
		rejectLimit = newRejectLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__REJECT_LIMIT, oldRejectLimit, rejectLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Trial> getPots() {
		if (pots == null) {
			pots = new EObjectResolvingEList<Trial>(Trial.class, this, ModelPackage.BATCH__POTS);
		}
		return pots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getStartAt() {
		return startAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStartAt(Instant newStartAt) {
		Instant oldStartAt = startAt;
		startAt = newStartAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BATCH__START_AT, oldStartAt, startAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.BATCH__CODE:
				return getCode();
			case ModelPackage.BATCH__TITLE:
				return getTitle();
			case ModelPackage.BATCH__RECIPE:
				if (resolve) return getRecipe();
				return basicGetRecipe();
			case ModelPackage.BATCH__WANTED:
				return getWanted();
			case ModelPackage.BATCH__SPARES:
				return getSpares();
			case ModelPackage.BATCH__CREATED_AT:
				return getCreatedAt();
			case ModelPackage.BATCH__NEEDED_BY:
				return getNeededBy();
			case ModelPackage.BATCH__CLOSED_AT:
				return getClosedAt();
			case ModelPackage.BATCH__REJECT_LIMIT:
				return getRejectLimit();
			case ModelPackage.BATCH__POTS:
				return getPots();
			case ModelPackage.BATCH__START_AT:
				return getStartAt();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.BATCH__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.BATCH__TITLE:
				setTitle((String)newValue);
				return;
			case ModelPackage.BATCH__RECIPE:
				setRecipe((Recipe)newValue);
				return;
			case ModelPackage.BATCH__WANTED:
				setWanted((Integer)newValue);
				return;
			case ModelPackage.BATCH__SPARES:
				setSpares((Integer)newValue);
				return;
			case ModelPackage.BATCH__CREATED_AT:
				setCreatedAt((Instant)newValue);
				return;
			case ModelPackage.BATCH__NEEDED_BY:
				setNeededBy((LocalDate)newValue);
				return;
			case ModelPackage.BATCH__CLOSED_AT:
				setClosedAt((Instant)newValue);
				return;
			case ModelPackage.BATCH__REJECT_LIMIT:
				setRejectLimit((Integer)newValue);
				return;
			case ModelPackage.BATCH__POTS:
				getPots().clear();
				getPots().addAll((Collection<? extends Trial>)newValue);
				return;
			case ModelPackage.BATCH__START_AT:
				setStartAt((Instant)newValue);
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
			case ModelPackage.BATCH__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.BATCH__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case ModelPackage.BATCH__RECIPE:
				setRecipe((Recipe)null);
				return;
			case ModelPackage.BATCH__WANTED:
				setWanted(WANTED_EDEFAULT);
				return;
			case ModelPackage.BATCH__SPARES:
				setSpares(SPARES_EDEFAULT);
				return;
			case ModelPackage.BATCH__CREATED_AT:
				setCreatedAt(CREATED_AT_EDEFAULT);
				return;
			case ModelPackage.BATCH__NEEDED_BY:
				setNeededBy(NEEDED_BY_EDEFAULT);
				return;
			case ModelPackage.BATCH__CLOSED_AT:
				setClosedAt(CLOSED_AT_EDEFAULT);
				return;
			case ModelPackage.BATCH__REJECT_LIMIT:
				setRejectLimit(REJECT_LIMIT_EDEFAULT);
				return;
			case ModelPackage.BATCH__POTS:
				getPots().clear();
				return;
			case ModelPackage.BATCH__START_AT:
				setStartAt(START_AT_EDEFAULT);
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
			case ModelPackage.BATCH__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.BATCH__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case ModelPackage.BATCH__RECIPE:
				return recipe != null;
			case ModelPackage.BATCH__WANTED:
				return WANTED_EDEFAULT == null ? wanted != null : !WANTED_EDEFAULT.equals(wanted);
			case ModelPackage.BATCH__SPARES:
				return SPARES_EDEFAULT == null ? spares != null : !SPARES_EDEFAULT.equals(spares);
			case ModelPackage.BATCH__CREATED_AT:
				return CREATED_AT_EDEFAULT == null ? createdAt != null : !CREATED_AT_EDEFAULT.equals(createdAt);
			case ModelPackage.BATCH__NEEDED_BY:
				return NEEDED_BY_EDEFAULT == null ? neededBy != null : !NEEDED_BY_EDEFAULT.equals(neededBy);
			case ModelPackage.BATCH__CLOSED_AT:
				return CLOSED_AT_EDEFAULT == null ? closedAt != null : !CLOSED_AT_EDEFAULT.equals(closedAt);
			case ModelPackage.BATCH__REJECT_LIMIT:
				return REJECT_LIMIT_EDEFAULT == null ? rejectLimit != null : !REJECT_LIMIT_EDEFAULT.equals(rejectLimit);
			case ModelPackage.BATCH__POTS:
				return pots != null && !pots.isEmpty();
			case ModelPackage.BATCH__START_AT:
				return START_AT_EDEFAULT == null ? startAt != null : !START_AT_EDEFAULT.equals(startAt);
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
		result.append(" (code: ");
		result.append(code);
		result.append(", title: ");
		result.append(title);
		result.append(", wanted: ");
		result.append(wanted);
		result.append(", spares: ");
		result.append(spares);
		result.append(", createdAt: ");
		result.append(createdAt);
		result.append(", neededBy: ");
		result.append(neededBy);
		result.append(", closedAt: ");
		result.append(closedAt);
		result.append(", rejectLimit: ");
		result.append(rejectLimit);
		result.append(", startAt: ");
		result.append(startAt);
		result.append(')');
		return result.toString();
	}

} //BatchImpl
