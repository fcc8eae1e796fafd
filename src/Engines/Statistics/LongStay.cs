namespace Slantwise.Engines.Statistics;

/// <summary>Three sets or more after each of which a pupil stayed, though nearly all or few trials succeeded. Something to ask about: there may be a good reason.</summary>
/// <param name="Kind">Whether nearly all or few succeeded.</param>
/// <param name="FirstIndex">The first of the sets, from 0 in the order given.</param>
/// <param name="SetCount">The sets with evidence in it, 3 or more.</param>
/// <remarks>90 and 40 in 100 are working rules, from common practice, no source; compared in whole numbers, set by set.</remarks>
public readonly record struct LongStay(StayKind Kind, int FirstIndex, int SetCount)
{
    private const int SetsAtLeast = 3;

    /// <summary>The long stays among a pupil's sets at one task.</summary>
    /// <param name="sets">In the order they were done. One of fewer than 3 trials is passed over: it neither counts nor ends a stay, unless the pupil moved after it.</param>
    /// <returns>In order; empty where there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Successes below 0 or above the trials; a direction that is none of the three.</exception>
    public static IReadOnlyList<LongStay> Of(IReadOnlyList<DecidedSet> sets)
    {
        var stays = new List<LongStay>();
        LongStay? now = null;
        void End()
        {
            if (now is { SetCount: >= SetsAtLeast } stay) stays.Add(stay);
            now = null;
        }

        for (var i = 0; i < sets.Count; i++)
        {
            var (successes, trials, next) = sets[i];
            if (!Enum.IsDefined(next)) throw new ArgumentOutOfRangeException(nameof(sets), next, "A decision is the same, harder or easier.");
            var hasEvidence = DecisionCoding.BandOf(successes, trials) != SuccessBand.TooFew;
            if (next != DecisionDirection.Same)
            {
                End();
                continue;
            }
            if (!hasEvidence) continue;
            StayKind? kind = 10L * successes >= 9L * trials ? StayKind.NearlyAlways : 10L * successes < 4L * trials ? StayKind.Seldom : null;
            if (now?.Kind != kind) End();
            if (kind is { } seen) now = now is { } stay ? stay with { SetCount = stay.SetCount + 1 } : new(seen, i, 1);
        }
        End();
        return stays;
    }
}
