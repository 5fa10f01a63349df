/**
 */
package org.flexwright.model.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.flexwright.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.flexwright.model.ModelPackage
 * @generated
 */
public class ModelAdapterFactory extends AdapterFactoryImpl {
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static ModelPackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelAdapterFactory() {
		if (modelPackage == null) {
			modelPackage = ModelPackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object) {
		if (object == modelPackage) {
			return true;
		}
		if (object instanceof EObject) {
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ModelSwitch<Adapter> modelSwitch =
		new ModelSwitch<Adapter>() {
			@Override
			public Adapter caseIdentified(Identified object) {
				return createIdentifiedAdapter();
			}
			@Override
			public Adapter caseEntry(Entry object) {
				return createEntryAdapter();
			}
			@Override
			public Adapter caseProvenance(Provenance object) {
				return createProvenanceAdapter();
			}
			@Override
			public Adapter caseProject(Project object) {
				return createProjectAdapter();
			}
			@Override
			public Adapter casePluginUse(PluginUse object) {
				return createPluginUseAdapter();
			}
			@Override
			public Adapter caseNeed(Need object) {
				return createNeedAdapter();
			}
			@Override
			public Adapter casePropertyKey(PropertyKey object) {
				return createPropertyKeyAdapter();
			}
			@Override
			public Adapter caseTargetSheet(TargetSheet object) {
				return createTargetSheetAdapter();
			}
			@Override
			public Adapter caseTarget(Target object) {
				return createTargetAdapter();
			}
			@Override
			public Adapter caseMaterialGrade(MaterialGrade object) {
				return createMaterialGradeAdapter();
			}
			@Override
			public Adapter caseMaterialValue(MaterialValue object) {
				return createMaterialValueAdapter();
			}
			@Override
			public Adapter caseLot(Lot object) {
				return createLotAdapter();
			}
			@Override
			public Adapter caseInstrument(Instrument object) {
				return createInstrumentAdapter();
			}
			@Override
			public Adapter caseSession(Session object) {
				return createSessionAdapter();
			}
			@Override
			public Adapter caseSpecimen(Specimen object) {
				return createSpecimenAdapter();
			}
			@Override
			public Adapter caseControlPiece(ControlPiece object) {
				return createControlPieceAdapter();
			}
			@Override
			public Adapter caseReferencePart(ReferencePart object) {
				return createReferencePartAdapter();
			}
			@Override
			public Adapter casePart(Part object) {
				return createPartAdapter();
			}
			@Override
			public Adapter caseMeasurement(Measurement object) {
				return createMeasurementAdapter();
			}
			@Override
			public Adapter caseReading(Reading object) {
				return createReadingAdapter();
			}
			@Override
			public Adapter caseTrial(Trial object) {
				return createTrialAdapter();
			}
			@Override
			public Adapter caseStep(Step object) {
				return createStepAdapter();
			}
			@Override
			public Adapter caseMaterialUse(MaterialUse object) {
				return createMaterialUseAdapter();
			}
			@Override
			public Adapter caseWeighing(Weighing object) {
				return createWeighingAdapter();
			}
			@Override
			public Adapter caseAttachment(Attachment object) {
				return createAttachmentAdapter();
			}
			@Override
			public Adapter caseRecipe(Recipe object) {
				return createRecipeAdapter();
			}
			@Override
			public Adapter caseAcknowledgement(Acknowledgement object) {
				return createAcknowledgementAdapter();
			}
			@Override
			public Adapter caseStopOverride(StopOverride object) {
				return createStopOverrideAdapter();
			}
			@Override
			public Adapter caseCalculationRun(CalculationRun object) {
				return createCalculationRunAdapter();
			}
			@Override
			public Adapter caseRunInput(RunInput object) {
				return createRunInputAdapter();
			}
			@Override
			public Adapter caseRunResult(RunResult object) {
				return createRunResultAdapter();
			}
			@Override
			public Adapter caseBenchNote(BenchNote object) {
				return createBenchNoteAdapter();
			}
			@Override
			public Adapter caseDecision(Decision object) {
				return createDecisionAdapter();
			}
			@Override
			public Adapter caseMould(Mould object) {
				return createMouldAdapter();
			}
			@Override
			public Adapter caseMouldCast(MouldCast object) {
				return createMouldCastAdapter();
			}
			@Override
			public Adapter casePremix(Premix object) {
				return createPremixAdapter();
			}
			@Override
			public Adapter caseBatch(Batch object) {
				return createBatchAdapter();
			}
			@Override
			public Adapter caseSavedSearch(SavedSearch object) {
				return createSavedSearchAdapter();
			}
			@Override
			public Adapter caseRecording(Recording object) {
				return createRecordingAdapter();
			}
			@Override
			public Adapter caseRecordingChannel(RecordingChannel object) {
				return createRecordingChannelAdapter();
			}
			@Override
			public Adapter caseRecordingMark(RecordingMark object) {
				return createRecordingMarkAdapter();
			}
			@Override
			public Adapter caseLawFit(LawFit object) {
				return createLawFitAdapter();
			}
			@Override
			public Adapter caseGaugeStudy(GaugeStudy object) {
				return createGaugeStudyAdapter();
			}
			@Override
			public Adapter caseGaugeCell(GaugeCell object) {
				return createGaugeCellAdapter();
			}
			@Override
			public Adapter caseSpotMap(SpotMap object) {
				return createSpotMapAdapter();
			}
			@Override
			public Adapter caseSpotPlace(SpotPlace object) {
				return createSpotPlaceAdapter();
			}
			@Override
			public Adapter caseRanking(Ranking object) {
				return createRankingAdapter();
			}
			@Override
			public Adapter caseRankList(RankList object) {
				return createRankListAdapter();
			}
			@Override
			public Adapter caseRankPlace(RankPlace object) {
				return createRankPlaceAdapter();
			}
			@Override
			public Adapter caseAgeingPlan(AgeingPlan object) {
				return createAgeingPlanAdapter();
			}
			@Override
			public Adapter caseAgeingPoint(AgeingPoint object) {
				return createAgeingPointAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object) {
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target) {
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Identified
	 * @generated
	 */
	public Adapter createIdentifiedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Entry <em>Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Entry
	 * @generated
	 */
	public Adapter createEntryAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Provenance <em>Provenance</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Provenance
	 * @generated
	 */
	public Adapter createProvenanceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Project <em>Project</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Project
	 * @generated
	 */
	public Adapter createProjectAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.PluginUse <em>Plugin Use</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.PluginUse
	 * @generated
	 */
	public Adapter createPluginUseAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Need <em>Need</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Need
	 * @generated
	 */
	public Adapter createNeedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.PropertyKey <em>Property Key</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.PropertyKey
	 * @generated
	 */
	public Adapter createPropertyKeyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.TargetSheet <em>Target Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.TargetSheet
	 * @generated
	 */
	public Adapter createTargetSheetAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Target <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Target
	 * @generated
	 */
	public Adapter createTargetAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.MaterialGrade <em>Material Grade</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.MaterialGrade
	 * @generated
	 */
	public Adapter createMaterialGradeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.MaterialValue <em>Material Value</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.MaterialValue
	 * @generated
	 */
	public Adapter createMaterialValueAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Lot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Lot
	 * @generated
	 */
	public Adapter createLotAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Instrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Instrument
	 * @generated
	 */
	public Adapter createInstrumentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Session <em>Session</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Session
	 * @generated
	 */
	public Adapter createSessionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Specimen <em>Specimen</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Specimen
	 * @generated
	 */
	public Adapter createSpecimenAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.ControlPiece <em>Control Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.ControlPiece
	 * @generated
	 */
	public Adapter createControlPieceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.ReferencePart <em>Reference Part</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.ReferencePart
	 * @generated
	 */
	public Adapter createReferencePartAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Part <em>Part</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Part
	 * @generated
	 */
	public Adapter createPartAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Measurement <em>Measurement</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Measurement
	 * @generated
	 */
	public Adapter createMeasurementAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Reading
	 * @generated
	 */
	public Adapter createReadingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Trial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Trial
	 * @generated
	 */
	public Adapter createTrialAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Step <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Step
	 * @generated
	 */
	public Adapter createStepAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.MaterialUse <em>Material Use</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.MaterialUse
	 * @generated
	 */
	public Adapter createMaterialUseAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Weighing <em>Weighing</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Weighing
	 * @generated
	 */
	public Adapter createWeighingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Attachment <em>Attachment</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Attachment
	 * @generated
	 */
	public Adapter createAttachmentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Recipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Recipe
	 * @generated
	 */
	public Adapter createRecipeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Acknowledgement <em>Acknowledgement</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Acknowledgement
	 * @generated
	 */
	public Adapter createAcknowledgementAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.StopOverride <em>Stop Override</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.StopOverride
	 * @generated
	 */
	public Adapter createStopOverrideAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.CalculationRun <em>Calculation Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.CalculationRun
	 * @generated
	 */
	public Adapter createCalculationRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RunInput <em>Run Input</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RunInput
	 * @generated
	 */
	public Adapter createRunInputAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RunResult <em>Run Result</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RunResult
	 * @generated
	 */
	public Adapter createRunResultAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.BenchNote <em>Bench Note</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.BenchNote
	 * @generated
	 */
	public Adapter createBenchNoteAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Decision <em>Decision</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Decision
	 * @generated
	 */
	public Adapter createDecisionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Mould <em>Mould</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Mould
	 * @generated
	 */
	public Adapter createMouldAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.MouldCast <em>Mould Cast</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.MouldCast
	 * @generated
	 */
	public Adapter createMouldCastAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Premix <em>Premix</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Premix
	 * @generated
	 */
	public Adapter createPremixAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Batch <em>Batch</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Batch
	 * @generated
	 */
	public Adapter createBatchAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.SavedSearch <em>Saved Search</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.SavedSearch
	 * @generated
	 */
	public Adapter createSavedSearchAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Recording <em>Recording</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Recording
	 * @generated
	 */
	public Adapter createRecordingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RecordingChannel <em>Recording Channel</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RecordingChannel
	 * @generated
	 */
	public Adapter createRecordingChannelAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RecordingMark <em>Recording Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RecordingMark
	 * @generated
	 */
	public Adapter createRecordingMarkAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.LawFit <em>Law Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.LawFit
	 * @generated
	 */
	public Adapter createLawFitAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.GaugeStudy <em>Gauge Study</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.GaugeStudy
	 * @generated
	 */
	public Adapter createGaugeStudyAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.GaugeCell <em>Gauge Cell</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.GaugeCell
	 * @generated
	 */
	public Adapter createGaugeCellAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.SpotMap <em>Spot Map</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.SpotMap
	 * @generated
	 */
	public Adapter createSpotMapAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.SpotPlace <em>Spot Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.SpotPlace
	 * @generated
	 */
	public Adapter createSpotPlaceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.Ranking <em>Ranking</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.Ranking
	 * @generated
	 */
	public Adapter createRankingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RankList <em>Rank List</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RankList
	 * @generated
	 */
	public Adapter createRankListAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.RankPlace <em>Rank Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.RankPlace
	 * @generated
	 */
	public Adapter createRankPlaceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.AgeingPlan <em>Ageing Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.AgeingPlan
	 * @generated
	 */
	public Adapter createAgeingPlanAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.flexwright.model.AgeingPoint <em>Ageing Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.flexwright.model.AgeingPoint
	 * @generated
	 */
	public Adapter createAgeingPointAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter() {
		return null;
	}

} //ModelAdapterFactory
