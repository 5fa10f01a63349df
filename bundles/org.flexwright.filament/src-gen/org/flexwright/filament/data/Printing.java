/**
 */
package org.flexwright.filament.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Printing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Settings of the print, the strand's way to the nozzle, and what came out.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.filament.data.Printing#getPlannedSpeed <em>Planned Speed</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getActualSpeed <em>Actual Speed</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getNozzleDiameter <em>Nozzle Diameter</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getNozzleLength <em>Nozzle Length</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getLayerHeight <em>Layer Height</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getLineWidth <em>Line Width</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getPlannedNozzleTemperature <em>Planned Nozzle Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getActualNozzleTemperature <em>Actual Nozzle Temperature</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getStrandDiameter <em>Strand Diameter</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getFreeLength <em>Free Length</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getStrandModulus <em>Strand Modulus</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getConsistency <em>Consistency</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getFlowIndex <em>Flow Index</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getPushForce <em>Push Force</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getHoursOut <em>Hours Out</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getPlannedMass <em>Planned Mass</em>}</li>
 *   <li>{@link org.flexwright.filament.data.Printing#getActualMass <em>Actual Mass</em>}</li>
 * </ul>
 *
 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting()
 * @model
 * @generated
 */
public interface Printing extends EObject {
	/**
	 * Returns the value of the '<em><b>Planned Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Speed</em>' attribute.
	 * @see #setPlannedSpeed(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_PlannedSpeed()
	 * @model annotation="urn:flexwright:field kind='SPEED' unit='mm/s' min='0' max='500' label='Speed' role='planned' help='Of the nozzle over the part.'"
	 * @generated
	 */
	Double getPlannedSpeed();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getPlannedSpeed <em>Planned Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Speed</em>' attribute.
	 * @see #getPlannedSpeed()
	 * @generated
	 */
	void setPlannedSpeed(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Speed</em>' attribute.
	 * @see #setActualSpeed(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_ActualSpeed()
	 * @model annotation="urn:flexwright:field kind='SPEED' unit='mm/s' min='0' max='500' label='Speed used' role='actual' of='plannedSpeed' limit='10%' help='Of the nozzle over the part.'"
	 * @generated
	 */
	Double getActualSpeed();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getActualSpeed <em>Actual Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Speed</em>' attribute.
	 * @see #getActualSpeed()
	 * @generated
	 */
	void setActualSpeed(Double value);

	/**
	 * Returns the value of the '<em><b>Nozzle Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Nozzle Diameter</em>' attribute.
	 * @see #setNozzleDiameter(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_NozzleDiameter()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0.1' max='3' label='Nozzle' role='planned' help='Diameter of the hole.'"
	 * @generated
	 */
	Double getNozzleDiameter();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getNozzleDiameter <em>Nozzle Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nozzle Diameter</em>' attribute.
	 * @see #getNozzleDiameter()
	 * @generated
	 */
	void setNozzleDiameter(Double value);

	/**
	 * Returns the value of the '<em><b>Nozzle Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Nozzle Length</em>' attribute.
	 * @see #setNozzleLength(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_NozzleLength()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='20' label='Nozzle land' role='planned' help='Length of the narrow part of the hole.'"
	 * @generated
	 */
	Double getNozzleLength();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getNozzleLength <em>Nozzle Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nozzle Length</em>' attribute.
	 * @see #getNozzleLength()
	 * @generated
	 */
	void setNozzleLength(Double value);

	/**
	 * Returns the value of the '<em><b>Layer Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Height</em>' attribute.
	 * @see #setLayerHeight(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_LayerHeight()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0.02' max='3' label='Layer height' role='planned' help='Thickness of one layer.'"
	 * @generated
	 */
	Double getLayerHeight();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getLayerHeight <em>Layer Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer Height</em>' attribute.
	 * @see #getLayerHeight()
	 * @generated
	 */
	void setLayerHeight(Double value);

	/**
	 * Returns the value of the '<em><b>Line Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Line Width</em>' attribute.
	 * @see #setLineWidth(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_LineWidth()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0.05' max='10' label='Line width' role='planned' help='Width of one laid strand.'"
	 * @generated
	 */
	Double getLineWidth();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getLineWidth <em>Line Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line Width</em>' attribute.
	 * @see #getLineWidth()
	 * @generated
	 */
	void setLineWidth(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Nozzle Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Nozzle Temperature</em>' attribute.
	 * @see #setPlannedNozzleTemperature(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_PlannedNozzleTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='100' max='350' label='Nozzle temperature' role='planned' help='As set.'"
	 * @generated
	 */
	Double getPlannedNozzleTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getPlannedNozzleTemperature <em>Planned Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Nozzle Temperature</em>' attribute.
	 * @see #getPlannedNozzleTemperature()
	 * @generated
	 */
	void setPlannedNozzleTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Nozzle Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Nozzle Temperature</em>' attribute.
	 * @see #setActualNozzleTemperature(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_ActualNozzleTemperature()
	 * @model annotation="urn:flexwright:field kind='TEMPERATURE' unit='degC' min='100' max='350' label='Nozzle temperature used' role='actual' of='plannedNozzleTemperature' limit='5 K' help='As set or read.'"
	 * @generated
	 */
	Double getActualNozzleTemperature();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getActualNozzleTemperature <em>Actual Nozzle Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Nozzle Temperature</em>' attribute.
	 * @see #getActualNozzleTemperature()
	 * @generated
	 */
	void setActualNozzleTemperature(Double value);

	/**
	 * Returns the value of the '<em><b>Strand Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strand Diameter</em>' attribute.
	 * @see #setStrandDiameter(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_StrandDiameter()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0.5' max='5' label='Strand diameter' role='planned' help='Mean of several places.'"
	 * @generated
	 */
	Double getStrandDiameter();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getStrandDiameter <em>Strand Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strand Diameter</em>' attribute.
	 * @see #getStrandDiameter()
	 * @generated
	 */
	void setStrandDiameter(Double value);

	/**
	 * Returns the value of the '<em><b>Free Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Free Length</em>' attribute.
	 * @see #setFreeLength(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_FreeLength()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='2000' label='Free length' role='planned' help='Between the drive wheel and the guide, where nothing holds the strand.'"
	 * @generated
	 */
	Double getFreeLength();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getFreeLength <em>Free Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Free Length</em>' attribute.
	 * @see #getFreeLength()
	 * @generated
	 */
	void setFreeLength(Double value);

	/**
	 * Returns the value of the '<em><b>Strand Modulus</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Strand Modulus</em>' attribute.
	 * @see #setStrandModulus(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_StrandModulus()
	 * @model annotation="urn:flexwright:field kind='STRESS' unit='MPa' min='0' max='5000' label='Strand modulus' role='planned' help='At small strain, cold.'"
	 * @generated
	 */
	Double getStrandModulus();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getStrandModulus <em>Strand Modulus</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strand Modulus</em>' attribute.
	 * @see #getStrandModulus()
	 * @generated
	 */
	void setStrandModulus(Double value);

	/**
	 * Returns the value of the '<em><b>Consistency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Consistency</em>' attribute.
	 * @see #setConsistency(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_Consistency()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0' max='1e7' label='Melt K (Pa s^n)' role='planned' help='Power law of the melt at the nozzle temperature; the viscosity in Pa s when n is 1.'"
	 * @generated
	 */
	Double getConsistency();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getConsistency <em>Consistency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Consistency</em>' attribute.
	 * @see #getConsistency()
	 * @generated
	 */
	void setConsistency(Double value);

	/**
	 * Returns the value of the '<em><b>Flow Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flow Index</em>' attribute.
	 * @see #setFlowIndex(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_FlowIndex()
	 * @model annotation="urn:flexwright:field kind='NUMBER' min='0.05' max='1.5' label='Melt n' role='planned' help='Power law index of the melt; 1 for a plain liquid.'"
	 * @generated
	 */
	Double getFlowIndex();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getFlowIndex <em>Flow Index</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flow Index</em>' attribute.
	 * @see #getFlowIndex()
	 * @generated
	 */
	void setFlowIndex(Double value);

	/**
	 * Returns the value of the '<em><b>Push Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Push Force</em>' attribute.
	 * @see #setPushForce(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_PushForce()
	 * @model annotation="urn:flexwright:field kind='FORCE' unit='N' min='0' max='1000' label='Push needed, measured' help='Measured on the strand at the planned speed; it counts before the calculated one.'"
	 * @generated
	 */
	Double getPushForce();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getPushForce <em>Push Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Push Force</em>' attribute.
	 * @see #getPushForce()
	 * @generated
	 */
	void setPushForce(Double value);

	/**
	 * Returns the value of the '<em><b>Hours Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hours Out</em>' attribute.
	 * @see #setHoursOut(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_HoursOut()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='h' min='0' max='10000' label='Strand out of the dry box' help='Since it was last dry.'"
	 * @generated
	 */
	Double getHoursOut();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getHoursOut <em>Hours Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hours Out</em>' attribute.
	 * @see #getHoursOut()
	 * @generated
	 */
	void setHoursOut(Double value);

	/**
	 * Returns the value of the '<em><b>Planned Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Planned Mass</em>' attribute.
	 * @see #setPlannedMass(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_PlannedMass()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Expected mass' role='planned' help='Of the print: volume of the strands laid times density.'"
	 * @generated
	 */
	Double getPlannedMass();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getPlannedMass <em>Planned Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Planned Mass</em>' attribute.
	 * @see #getPlannedMass()
	 * @generated
	 */
	void setPlannedMass(Double value);

	/**
	 * Returns the value of the '<em><b>Actual Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Actual Mass</em>' attribute.
	 * @see #setActualMass(Double)
	 * @see org.flexwright.filament.data.FilamentDataPackage#getPrinting_ActualMass()
	 * @model annotation="urn:flexwright:field kind='MASS' unit='g' min='0' max='100000' label='Mass weighed' role='actual' of='plannedMass' limit='5%' help='Of the print without supports.'"
	 * @generated
	 */
	Double getActualMass();

	/**
	 * Sets the value of the '{@link org.flexwright.filament.data.Printing#getActualMass <em>Actual Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Actual Mass</em>' attribute.
	 * @see #getActualMass()
	 * @generated
	 */
	void setActualMass(Double value);

} // Printing
