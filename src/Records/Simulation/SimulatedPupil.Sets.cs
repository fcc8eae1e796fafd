using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Simulation;

/// <summary>How a simulated pupil goes through one set: choice, prediction, trials, cues.</summary>
internal sealed partial class SimulatedPupil
{
    // How often a teacher who looks at a cue sees what was there.
    private const double TeacherSeesRightFraction = 0.95;

    // How often the teacher looks before seeing the pupil's tick.
    private const double BlindCheckFraction = 0.7;

    private SetOutcome DoSet(LessonNotes notes, SetPlace place, SetOutcome? last)
    {
        notes.Put(notes.At(place.Index, 0), new Choice(place.Level.Id), place.Task.TaskId, place.Number);
        var setLogits = SuccessLogits(place.Level);
        if (Predict(place, last) is { } prediction && !_draws.Happens(_plan.Mess.ForgottenPredictionFraction))
        {
            notes.Put(notes.At(place.Index, 1), prediction, place.Task.TaskId, place.Number);
        }
        var successCount = 0;
        for (var number = 1; number <= place.Content.TrialCount; number++)
        {
            var trial = Try(place.Level);
            if (trial.IsSuccess) successCount++;
            NoteTrial(notes, place, number, trial);
        }
        TickCues(notes, place, setLogits);
        return new SetOutcome(place.Level.Id, successCount);
    }

    private Prediction? Predict(SetPlace place, SetOutcome? last)
    {
        var believed = BelievedLogits(place.Level) + _draws.NextNormal(0, _plan.Population.PredictionSdLogits);
        var (level, trialCount) = (place.Level, place.Content.TrialCount);
        switch (place.Content.Predicts)
        {
            case PredictionKind.SuccessCount:
                var expected = PortableMath.Logistic(believed);
                if (last is not null && last.LevelId == level.Id)
                {
                    var weight = _plan.Population.FromExperienceFraction;
                    expected = ((1 - weight) * expected) + (weight * last.SuccessCount / trialCount);
                }
                return new Prediction((int)Math.Round(expected * trialCount, MidpointRounding.AwayFromZero), null);

            case PredictionKind.HoldS when level.Dose.Kind == DoseKind.HoldS:
                // The best of n holds passes t half the time where one hold stays below t with a chance of 0.5^(1/n).
                var oneStaysBelow = PortableMath.Exp(PortableMath.Log(0.5) / trialCount);
                var best = HoldS(level, believed + PortableMath.Logit(oneStaysBelow));
                var halves = Math.Round(Math.Min(best, (double)level.Dose.Amount) * 2, MidpointRounding.AwayFromZero);
                return new Prediction(null, Math.Max(halves, 1) / 2);

            default:
                return null;
        }
    }

    /// <summary>One try: held long enough, or reached at all, where log odds and luck together are not below 0.</summary>
    private Trial Try(Level level)
    {
        var logits = SuccessLogits(level) + _draws.NextLogistic();
        _trialsBefore++;
        var isTimed = !_draws.Happens(_plan.Mess.UntimedTrialFraction) && level.Dose.Kind == DoseKind.HoldS;
        if (!isTimed) return new Trial(logits >= 0);
        if (logits >= 0) return new Trial(true, (double)level.Dose.Amount);
        // A hold that just fell short may round up to the dose, and then the watch would contradict the cross.
        var shown = Math.Min(Math.Round((decimal)HoldS(level, logits), 1), level.Dose.Amount - 0.1m);
        return new Trial(false, (double)Math.Max(shown, 0));
    }

    // logit P(hold ≥ t) = logits − slope · ln(t / dose), solved for t.
    private double HoldS(Level level, double logits) =>
        (double)level.Dose.Amount * PortableMath.Exp(logits / _truth.Level(level.Id).HoldSlopeLogits);

    private void NoteTrial(LessonNotes notes, SetPlace place, int number, Trial trial)
    {
        var at = notes.At(place.Index, 1 + number);
        if (!_draws.Happens(_plan.Mess.CorrectedTrialFraction))
        {
            notes.Put(at, trial, place.Task.TaskId, place.Number, number);
            return;
        }
        var slip = notes.Put(at, new Trial(!trial.IsSuccess), place.Task.TaskId, place.Number, number);
        notes.Put(notes.AtCorrection(place.Index + number), trial, place.Task.TaskId, place.Number, number, slip.Id);
    }

    private void TickCues(LessonNotes notes, SetPlace place, double setLogits)
    {
        var isTicked = !_draws.Happens(_plan.Mess.UntickedSetFraction);
        var isChecked = _draws.Happens(_plan.Mess.TeacherCheckFraction);
        var checkedNumber = 1 + _draws.NextIndex(Math.Max(place.Task.Cues.Count, 1));
        var at = notes.At(place.Index, place.Content.TrialCount + 2);
        foreach (var cue in _truth.Cues.Where(c => c.TaskId == place.Task.TaskId && c.CueNumber <= place.Task.Cues.Count))
        {
            var isMet = _draws.Happens(PortableMath.Logistic(setLogits + cue.EaseLogits));
            var isLeftOpen = _draws.Happens(isMet ? _plan.Population.OverlookedCueFraction : _self.HonestyFraction);
            var isSeenRight = _draws.Happens(TeacherSeesRightFraction);
            var isBlind = _draws.Happens(BlindCheckFraction);
            var moment = at + TimeSpan.FromMilliseconds(400 * cue.CueNumber);
            if (isTicked) notes.Put(moment, new CueTick(cue.CueNumber, !isLeftOpen), place.Task.TaskId, place.Number);
            if (isChecked && cue.CueNumber == checkedNumber)
            {
                notes.Put(moment, new TeacherCheck(cue.CueNumber, isMet == isSeenRight, isBlind), place.Task.TaskId, place.Number);
            }
        }
    }
}
