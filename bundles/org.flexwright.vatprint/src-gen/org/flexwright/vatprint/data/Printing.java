/**
 */
package org.flexwright.vatprint.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Printing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Settings of the print and the resin's own working curve.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getLayerHeight <em>Layer Height</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getPlannedExposure <em>Planned Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getActualExposure <em>Actual Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getExposureForLayer <em>Exposure For Layer</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getIrradiance <em>Irradiance</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getPenetrationDepth <em>Penetration Depth</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getCriticalDose <em>Critical Dose</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getOverCure <em>Over Cure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getPartHeight <em>Part Height</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getBaseLayers <em>Base Layers</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getBaseExposure <em>Base Exposure</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getMoveTime <em>Move Time</em>}</li>
 *   <li>{@link org.flexwright.vatprint.data.Printing#getPrintedVolume <em>Printed Volume</em>}</li>
 * </ul>
 *
 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting()
 * @model
 * @generated
 */
public interface Printing extends EObject {
	/**
	 * Returns the value of the '<em><b>Layer Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Height</em>' attribute.
	 * @see #setLayerHeight(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_LayerHeight()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='um' min='5' max='500' label='Layer height' role='planned' help='Thickness of one layer.'"
	 * @generated
	 */
	Double getLayerHeight();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getLayerHeight <em>Layer Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer Height</em>' attribute.
	 * @see #getLayerHeight()
	 * @generated
	 */
	void setLayerHeight(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Exposure</em>' attribute.
	 * @see #setPlannedExposure(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_PlannedExposure()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='s' min='0' max='600' label='Exposure' role='planned' help='Of a normal layer.'"
	 * @generated
	 */
	Double getPlannedExposure();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getPlannedExposure <em>Planned Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Exposure</em>' attribute.
	 * @see #getPlannedExposure()
	 * @generated
	 */
	void setPlannedExposure(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Exposure</em>' attribute.
	 * @see #setActualExposure(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_ActualExposure()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='s' min='0' max='600' label='Exposure used' role='actual' of='plannedExposure' limit='2%' help='As set on the machine.'"
	 * @generated
	 */
	Double getActualExposure();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getActualExposure <em>Actual Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Exposure</em>' attribute.
	 * @see #getActualExposure()
	 * @generated
	 */
	void setActualExposure(Double value);

	/**
	 * Returns the value of the '<em><b>Exposure For Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Exposure For Layer</em>' attribute.
	 * @see #setExposureForLayer(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_ExposureForLayer()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='um' min='5' max='500' label='Exposure is for layers of' role='planned' help='The layer height for which that exposure was found; it does not hold for another one.'"
	 * @generated
	 */
	Double getExposureForLayer();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getExposureForLayer <em>Exposure For Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Exposure For Layer</em>' attribute.
	 * @see #getExposureForLayer()
	 * @generated
	 */
	void setExposureForLayer(Double value);

	/**
	 * Returns the value of the '<em><b>Irradiance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Irradiance</em>' attribute.
	 * @see #setIrradiance(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_Irradiance()
	 * @model annotation="urn:flexwright:field kind='IRRADIANCE' unit='mW/cm2' min='0' max='1000' label='Irradiance' role='planned' help='Read at the vat floor with a meter for the lamp\'s wavelength.'"
	 * @generated
	 */
	Double getIrradiance();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getIrradiance <em>Irradiance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Irradiance</em>' attribute.
	 * @see #getIrradiance()
	 * @generated
	 */
	void setIrradiance(Double value);

	/**
	 * Returns the value of the '<em><b>Penetration Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Penetration Depth</em>' attribute.
	 * @see #setPenetrationDepth(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_PenetrationDepth()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='um' min='1' max='5000' label='Penetration depth Dp' role='planned' help='Slope of your own working curve.'"
	 * @generated
	 */
	Double getPenetrationDepth();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getPenetrationDepth <em>Penetration Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Penetration Depth</em>' attribute.
	 * @see #getPenetrationDepth()
	 * @generated
	 */
	void setPenetrationDepth(Double value);

	/**
	 * Returns the value of the '<em><b>Critical Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Critical Dose</em>' attribute.
	 * @see #setCriticalDose(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_CriticalDose()
	 * @model annotation="urn:flexwright:field kind='DOSE' unit='mJ/cm2' min='0' max='10000' label='Critical dose Ec' role='planned' help='Where your own working curve meets zero depth.'"
	 * @generated
	 */
	Double getCriticalDose();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getCriticalDose <em>Critical Dose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Critical Dose</em>' attribute.
	 * @see #getCriticalDose()
	 * @generated
	 */
	void setCriticalDose(Double value);

	/**
	 * Returns the value of the '<em><b>Over Cure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Over Cure</em>' attribute.
	 * @see #setOverCure(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_OverCure()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='um' min='0' max='1000' label='Over-cure wanted' role='planned' help='How far a layer shall cure into the one below it.'"
	 * @generated
	 */
	Double getOverCure();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getOverCure <em>Over Cure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Over Cure</em>' attribute.
	 * @see #getOverCure()
	 * @generated
	 */
	void setOverCure(Double value);

	/**
	 * Returns the value of the '<em><b>Part Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Part Height</em>' attribute.
	 * @see #setPartHeight(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_PartHeight()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' label='Height of the print' role='planned' help='From the plate to the top, supports included.'"
	 * @generated
	 */
	Double getPartHeight();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getPartHeight <em>Part Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part Height</em>' attribute.
	 * @see #getPartHeight()
	 * @generated
	 */
	void setPartHeight(Double value);

	/**
	 * Returns the value of the '<em><b>Base Layers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Base Layers</em>' attribute.
	 * @see #setBaseLayers(Integer)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_BaseLayers()
	 * @model annotation="urn:flexwright:field min='0' max='200' label='Base layers' role='planned' help='First layers with a longer exposure.'"
	 * @generated
	 */
	Integer getBaseLayers();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getBaseLayers <em>Base Layers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Layers</em>' attribute.
	 * @see #getBaseLayers()
	 * @generated
	 */
	void setBaseLayers(Integer value);

	/**
	 * Returns the value of the '<em><b>Base Exposure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Base Exposure</em>' attribute.
	 * @see #setBaseExposure(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_BaseExposure()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='s' min='0' max='600' label='Base exposure' role='planned' help='Of each base layer.'"
	 * @generated
	 */
	Double getBaseExposure();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getBaseExposure <em>Base Exposure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Exposure</em>' attribute.
	 * @see #getBaseExposure()
	 * @generated
	 */
	void setBaseExposure(Double value);

	/**
	 * Returns the value of the '<em><b>Move Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Move Time</em>' attribute.
	 * @see #setMoveTime(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_MoveTime()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='s' min='0' max='120' label='Move per layer' role='planned' help='Lift, lower and wait between two exposures.'"
	 * @generated
	 */
	Double getMoveTime();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getMoveTime <em>Move Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Move Time</em>' attribute.
	 * @see #getMoveTime()
	 * @generated
	 */
	void setMoveTime(Double value);

	/**
	 * Returns the value of the '<em><b>Printed Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Printed Volume</em>' attribute.
	 * @see #setPrintedVolume(Double)
	 * @see org.flexwright.vatprint.data.VatprintDataPackage#getPrinting_PrintedVolume()
	 * @model annotation="urn:flexwright:field kind='VOLUME' unit='cm3' min='0' max='100000' label='Volume with supports' role='planned' help='Of everything that is printed.'"
	 * @generated
	 */
	Double getPrintedVolume();

	/**
	 * Sets the value of the '{@link org.flexwright.vatprint.data.Printing#getPrintedVolume <em>Printed Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Printed Volume</em>' attribute.
	 * @see #getPrintedVolume()
	 * @generated
	 */
	void setPrintedVolume(Double value);

} // Printing
