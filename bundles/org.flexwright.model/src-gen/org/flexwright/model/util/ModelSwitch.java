/**
 */
package org.flexwright.model.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import org.flexwright.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see org.flexwright.model.ModelPackage
 * @generated
 */
public class ModelSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static ModelPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelSwitch() {
		if (modelPackage == null) {
			modelPackage = ModelPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case ModelPackage.IDENTIFIED: {
				Identified identified = (Identified)theEObject;
				T result = caseIdentified(identified);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ENTRY: {
				Entry entry = (Entry)theEObject;
				T result = caseEntry(entry);
				if (result == null) result = caseIdentified(entry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PROVENANCE: {
				Provenance provenance = (Provenance)theEObject;
				T result = caseProvenance(provenance);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PROJECT: {
				Project project = (Project)theEObject;
				T result = caseProject(project);
				if (result == null) result = caseEntry(project);
				if (result == null) result = caseIdentified(project);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PLUGIN_USE: {
				PluginUse pluginUse = (PluginUse)theEObject;
				T result = casePluginUse(pluginUse);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.NEED: {
				Need need = (Need)theEObject;
				T result = caseNeed(need);
				if (result == null) result = caseEntry(need);
				if (result == null) result = caseIdentified(need);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PROPERTY_KEY: {
				PropertyKey propertyKey = (PropertyKey)theEObject;
				T result = casePropertyKey(propertyKey);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TARGET_SHEET: {
				TargetSheet targetSheet = (TargetSheet)theEObject;
				T result = caseTargetSheet(targetSheet);
				if (result == null) result = caseEntry(targetSheet);
				if (result == null) result = caseIdentified(targetSheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TARGET: {
				Target target = (Target)theEObject;
				T result = caseTarget(target);
				if (result == null) result = caseEntry(target);
				if (result == null) result = caseIdentified(target);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MATERIAL_GRADE: {
				MaterialGrade materialGrade = (MaterialGrade)theEObject;
				T result = caseMaterialGrade(materialGrade);
				if (result == null) result = caseEntry(materialGrade);
				if (result == null) result = caseIdentified(materialGrade);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MATERIAL_VALUE: {
				MaterialValue materialValue = (MaterialValue)theEObject;
				T result = caseMaterialValue(materialValue);
				if (result == null) result = caseEntry(materialValue);
				if (result == null) result = caseIdentified(materialValue);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LOT: {
				Lot lot = (Lot)theEObject;
				T result = caseLot(lot);
				if (result == null) result = caseEntry(lot);
				if (result == null) result = caseIdentified(lot);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.INSTRUMENT: {
				Instrument instrument = (Instrument)theEObject;
				T result = caseInstrument(instrument);
				if (result == null) result = caseEntry(instrument);
				if (result == null) result = caseIdentified(instrument);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SESSION: {
				Session session = (Session)theEObject;
				T result = caseSession(session);
				if (result == null) result = caseEntry(session);
				if (result == null) result = caseIdentified(session);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SPECIMEN: {
				Specimen specimen = (Specimen)theEObject;
				T result = caseSpecimen(specimen);
				if (result == null) result = caseEntry(specimen);
				if (result == null) result = caseIdentified(specimen);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CONTROL_PIECE: {
				ControlPiece controlPiece = (ControlPiece)theEObject;
				T result = caseControlPiece(controlPiece);
				if (result == null) result = caseSpecimen(controlPiece);
				if (result == null) result = caseEntry(controlPiece);
				if (result == null) result = caseIdentified(controlPiece);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.REFERENCE_PART: {
				ReferencePart referencePart = (ReferencePart)theEObject;
				T result = caseReferencePart(referencePart);
				if (result == null) result = caseSpecimen(referencePart);
				if (result == null) result = caseEntry(referencePart);
				if (result == null) result = caseIdentified(referencePart);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PART: {
				Part part = (Part)theEObject;
				T result = casePart(part);
				if (result == null) result = caseSpecimen(part);
				if (result == null) result = caseEntry(part);
				if (result == null) result = caseIdentified(part);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MEASUREMENT: {
				Measurement measurement = (Measurement)theEObject;
				T result = caseMeasurement(measurement);
				if (result == null) result = caseEntry(measurement);
				if (result == null) result = caseIdentified(measurement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.READING: {
				Reading reading = (Reading)theEObject;
				T result = caseReading(reading);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TRIAL: {
				Trial trial = (Trial)theEObject;
				T result = caseTrial(trial);
				if (result == null) result = caseEntry(trial);
				if (result == null) result = caseIdentified(trial);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STEP: {
				Step step = (Step)theEObject;
				T result = caseStep(step);
				if (result == null) result = caseEntry(step);
				if (result == null) result = caseIdentified(step);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MATERIAL_USE: {
				MaterialUse materialUse = (MaterialUse)theEObject;
				T result = caseMaterialUse(materialUse);
				if (result == null) result = caseEntry(materialUse);
				if (result == null) result = caseIdentified(materialUse);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.WEIGHING: {
				Weighing weighing = (Weighing)theEObject;
				T result = caseWeighing(weighing);
				if (result == null) result = caseEntry(weighing);
				if (result == null) result = caseIdentified(weighing);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ATTACHMENT: {
				Attachment attachment = (Attachment)theEObject;
				T result = caseAttachment(attachment);
				if (result == null) result = caseEntry(attachment);
				if (result == null) result = caseIdentified(attachment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RECIPE: {
				Recipe recipe = (Recipe)theEObject;
				T result = caseRecipe(recipe);
				if (result == null) result = caseEntry(recipe);
				if (result == null) result = caseIdentified(recipe);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ACKNOWLEDGEMENT: {
				Acknowledgement acknowledgement = (Acknowledgement)theEObject;
				T result = caseAcknowledgement(acknowledgement);
				if (result == null) result = caseEntry(acknowledgement);
				if (result == null) result = caseIdentified(acknowledgement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STOP_OVERRIDE: {
				StopOverride stopOverride = (StopOverride)theEObject;
				T result = caseStopOverride(stopOverride);
				if (result == null) result = caseEntry(stopOverride);
				if (result == null) result = caseIdentified(stopOverride);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CALCULATION_RUN: {
				CalculationRun calculationRun = (CalculationRun)theEObject;
				T result = caseCalculationRun(calculationRun);
				if (result == null) result = caseEntry(calculationRun);
				if (result == null) result = caseIdentified(calculationRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RUN_INPUT: {
				RunInput runInput = (RunInput)theEObject;
				T result = caseRunInput(runInput);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RUN_RESULT: {
				RunResult runResult = (RunResult)theEObject;
				T result = caseRunResult(runResult);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BENCH_NOTE: {
				BenchNote benchNote = (BenchNote)theEObject;
				T result = caseBenchNote(benchNote);
				if (result == null) result = caseEntry(benchNote);
				if (result == null) result = caseIdentified(benchNote);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DECISION: {
				Decision decision = (Decision)theEObject;
				T result = caseDecision(decision);
				if (result == null) result = caseEntry(decision);
				if (result == null) result = caseIdentified(decision);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MOULD: {
				Mould mould = (Mould)theEObject;
				T result = caseMould(mould);
				if (result == null) result = caseEntry(mould);
				if (result == null) result = caseIdentified(mould);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MOULD_CAST: {
				MouldCast mouldCast = (MouldCast)theEObject;
				T result = caseMouldCast(mouldCast);
				if (result == null) result = caseEntry(mouldCast);
				if (result == null) result = caseIdentified(mouldCast);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PREMIX: {
				Premix premix = (Premix)theEObject;
				T result = casePremix(premix);
				if (result == null) result = caseEntry(premix);
				if (result == null) result = caseIdentified(premix);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BATCH: {
				Batch batch = (Batch)theEObject;
				T result = caseBatch(batch);
				if (result == null) result = caseEntry(batch);
				if (result == null) result = caseIdentified(batch);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SAVED_SEARCH: {
				SavedSearch savedSearch = (SavedSearch)theEObject;
				T result = caseSavedSearch(savedSearch);
				if (result == null) result = caseEntry(savedSearch);
				if (result == null) result = caseIdentified(savedSearch);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RECORDING: {
				Recording recording = (Recording)theEObject;
				T result = caseRecording(recording);
				if (result == null) result = caseEntry(recording);
				if (result == null) result = caseIdentified(recording);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RECORDING_CHANNEL: {
				RecordingChannel recordingChannel = (RecordingChannel)theEObject;
				T result = caseRecordingChannel(recordingChannel);
				if (result == null) result = caseEntry(recordingChannel);
				if (result == null) result = caseIdentified(recordingChannel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RECORDING_MARK: {
				RecordingMark recordingMark = (RecordingMark)theEObject;
				T result = caseRecordingMark(recordingMark);
				if (result == null) result = caseEntry(recordingMark);
				if (result == null) result = caseIdentified(recordingMark);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LAW_FIT: {
				LawFit lawFit = (LawFit)theEObject;
				T result = caseLawFit(lawFit);
				if (result == null) result = caseEntry(lawFit);
				if (result == null) result = caseIdentified(lawFit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.GAUGE_STUDY: {
				GaugeStudy gaugeStudy = (GaugeStudy)theEObject;
				T result = caseGaugeStudy(gaugeStudy);
				if (result == null) result = caseEntry(gaugeStudy);
				if (result == null) result = caseIdentified(gaugeStudy);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.GAUGE_CELL: {
				GaugeCell gaugeCell = (GaugeCell)theEObject;
				T result = caseGaugeCell(gaugeCell);
				if (result == null) result = caseEntry(gaugeCell);
				if (result == null) result = caseIdentified(gaugeCell);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SPOT_MAP: {
				SpotMap spotMap = (SpotMap)theEObject;
				T result = caseSpotMap(spotMap);
				if (result == null) result = caseEntry(spotMap);
				if (result == null) result = caseIdentified(spotMap);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SPOT_PLACE: {
				SpotPlace spotPlace = (SpotPlace)theEObject;
				T result = caseSpotPlace(spotPlace);
				if (result == null) result = caseEntry(spotPlace);
				if (result == null) result = caseIdentified(spotPlace);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RANKING: {
				Ranking ranking = (Ranking)theEObject;
				T result = caseRanking(ranking);
				if (result == null) result = caseEntry(ranking);
				if (result == null) result = caseIdentified(ranking);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RANK_LIST: {
				RankList rankList = (RankList)theEObject;
				T result = caseRankList(rankList);
				if (result == null) result = caseEntry(rankList);
				if (result == null) result = caseIdentified(rankList);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RANK_PLACE: {
				RankPlace rankPlace = (RankPlace)theEObject;
				T result = caseRankPlace(rankPlace);
				if (result == null) result = caseEntry(rankPlace);
				if (result == null) result = caseIdentified(rankPlace);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.AGEING_PLAN: {
				AgeingPlan ageingPlan = (AgeingPlan)theEObject;
				T result = caseAgeingPlan(ageingPlan);
				if (result == null) result = caseEntry(ageingPlan);
				if (result == null) result = caseIdentified(ageingPlan);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.AGEING_POINT: {
				AgeingPoint ageingPoint = (AgeingPoint)theEObject;
				T result = caseAgeingPoint(ageingPoint);
				if (result == null) result = caseEntry(ageingPoint);
				if (result == null) result = caseIdentified(ageingPoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIdentified(Identified object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Entry</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Entry</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseEntry(Entry object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Provenance</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Provenance</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProvenance(Provenance object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Project</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Project</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProject(Project object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Plugin Use</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Plugin Use</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePluginUse(PluginUse object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Need</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Need</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNeed(Need object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Property Key</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Property Key</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePropertyKey(PropertyKey object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Target Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Target Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTargetSheet(TargetSheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Target</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Target</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTarget(Target object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Material Grade</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Material Grade</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMaterialGrade(MaterialGrade object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Material Value</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Material Value</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMaterialValue(MaterialValue object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lot</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lot</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLot(Lot object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Instrument</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Instrument</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInstrument(Instrument object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Session</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Session</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSession(Session object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Specimen</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Specimen</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSpecimen(Specimen object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Control Piece</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Control Piece</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseControlPiece(ControlPiece object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reference Part</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reference Part</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReferencePart(ReferencePart object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Part</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Part</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePart(Part object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Measurement</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Measurement</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMeasurement(Measurement object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReading(Reading object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTrial(Trial object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Step</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Step</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStep(Step object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Material Use</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Material Use</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMaterialUse(MaterialUse object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Weighing</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Weighing</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWeighing(Weighing object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Attachment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Attachment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAttachment(Attachment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Recipe</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Recipe</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRecipe(Recipe object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Acknowledgement</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Acknowledgement</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAcknowledgement(Acknowledgement object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stop Override</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stop Override</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStopOverride(StopOverride object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Calculation Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Calculation Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCalculationRun(CalculationRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Run Input</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Run Input</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRunInput(RunInput object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Run Result</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Run Result</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRunResult(RunResult object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Bench Note</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Bench Note</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBenchNote(BenchNote object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Decision</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Decision</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDecision(Decision object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mould</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mould</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMould(Mould object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mould Cast</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mould Cast</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMouldCast(MouldCast object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Premix</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Premix</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePremix(Premix object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Batch</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Batch</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBatch(Batch object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Saved Search</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Saved Search</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSavedSearch(SavedSearch object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Recording</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Recording</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRecording(Recording object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Recording Channel</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Recording Channel</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRecordingChannel(RecordingChannel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Recording Mark</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Recording Mark</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRecordingMark(RecordingMark object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Law Fit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Law Fit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLawFit(LawFit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Gauge Study</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Gauge Study</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGaugeStudy(GaugeStudy object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Gauge Cell</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Gauge Cell</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGaugeCell(GaugeCell object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Spot Map</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Spot Map</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSpotMap(SpotMap object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Spot Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Spot Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSpotPlace(SpotPlace object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ranking</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ranking</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRanking(Ranking object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Rank List</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Rank List</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRankList(RankList object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Rank Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Rank Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRankPlace(RankPlace object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ageing Plan</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ageing Plan</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAgeingPlan(AgeingPlan object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ageing Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ageing Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAgeingPoint(AgeingPoint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //ModelSwitch
