/**
 */
package org.flexwright.vatprint.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Washing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How uncured resin is taken off.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getSolvent <em>Solvent</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getPlannedMinutes <em>Planned Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getActualMinutes <em>Actual Minutes</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getBaths <em>Baths</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getBathVolume <em>Bath Volume</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Washing#getCarriedVolume <em>Carried Volume</em>}</li>
 * </ul>
 *
 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing()
 * @model
 * @generated
 */
public interface Washing extends EObject {
	/**
	 * Returns the value of the '<em><b>Solvent</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.vatprint.data.WashSolvent}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Solvent</em>' attribute.
	 * @see org.flexwright.vatprint.data.WashSolvent
	 * @see #setSolvent(WashSolvent)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_Solvent()
	 * @model annotation="urn:flexwright:field label='Solvent' role='planned' help='What the bath is.'"
	 * @generated
	 */
	WashSolvent getSolvent();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getSolvent <em>Solvent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Solvent</em>' attribute.
	 * @see org.flexwright.vatprint.data.WashSolvent
	 * @see #getSolvent()
	 * @generated
	 */
	void setSolvent(WashSolvent value);

	/**
	 * Returns the value of the '<em><b>Planned Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Minutes</em>' attribute.
	 * @see #setPlannedMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_PlannedMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='600' label='Wash, all baths' role='planned' help='Time in the solvent, all baths together.'"
	 * @generated
	 */
	Double getPlannedMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getPlannedMinutes <em>Planned Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Minutes</em>' attribute.
	 * @see #getPlannedMinutes()
	 * @generated
	 */
	void setPlannedMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Minutes</em>' attribute.
	 * @see #setActualMinutes(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_ActualMinutes()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='min' min='0' max='600' label='Washed for' role='actual' of='plannedMinutes' limit='25%' help='Time in the solvent, all baths together.'"
	 * @generated
	 */
	Double getActualMinutes();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getActualMinutes <em>Actual Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Minutes</em>' attribute.
	 * @see #getActualMinutes()
	 * @generated
	 */
	void setActualMinutes(Double value);

	/**
	 * Returns the value of the '<em><b>Baths</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Baths</em>' attribute.
	 * @see #setBaths(Integer)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_Baths()
	 * @model annotation="urn:flexwright:field min='1' max='20' label='Baths' role='planned' help='Baths one after another, the last one the cleanest.'"
	 * @generated
	 */
	Integer getBaths();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getBaths <em>Baths</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Baths</em>' attribute.
	 * @see #getBaths()
	 * @generated
	 */
	void setBaths(Integer value);

	/**
	 * Returns the value of the '<em><b>Bath Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bath Volume</em>' attribute.
	 * @see #setBathVolume(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_BathVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='100000' label='Solvent in a bath' role='planned' help='In each bath.'"
	 * @generated
	 */
	Double getBathVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getBathVolume <em>Bath Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bath Volume</em>' attribute.
	 * @see #getBathVolume()
	 * @generated
	 */
	void setBathVolume(Double value);

	/**
	 * Returns the value of the '<em><b>Carried Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Carried Volume</em>' attribute.
	 * @see #setCarriedVolume(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getWashing_CarriedVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='ml' min='0' max='10000' label='Liquid carried over' role='planned' help='What clings to the parts from one bath to the next.'"
	 * @generated
	 */
	Double getCarriedVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Washing#getCarriedVolume <em>Carried Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carried Volume</em>' attribute.
	 * @see #getCarriedVolume()
	 * @generated
	 */
	void setCarriedVolume(Double value);

} // Washing
