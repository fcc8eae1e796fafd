namespace Slantwise.Records.Scans.Intake;

/// <summary>A page that was read before: what a person said to it then still holds.</summary>
internal static class ScanMerge
{
    /// <summary>The new reading under the old one's id, with the answers given so far.</summary>
    /// <param name="before">The scan of the same page.</param>
    /// <param name="now">The new reading.</param>
    /// <returns>The old scan itself where the new reading is of no use: it was thrown away, or this photo is worse.</returns>
    public static Scan Of(Scan before, Scan now)
    {
        var isSamePicture = before.PictureTag == now.PictureTag;
        if (before.State == ScanState.Discarded && isSamePicture) return before;
        if (now.IsFaulty && !before.IsFaulty) return before;
        var answered = before.Items.Where(i => i.Answer is not null).ToDictionary(i => i.Key);
        return now with
        {
            Id = before.Id,
            PupilId = before.PupilId ?? now.PupilId,
            IsConfirmed = before.IsConfirmed,
            Items = [.. now.Items.Select(item => answered.TryGetValue(item.Key, out var old) ? WithAnswer(item, old) : item)],
        };
    }

    private static ScanItem WithAnswer(ScanItem now, ScanItem before) => before switch
    {
        { Doubt: ScanDoubt.Differs or ScanDoubt.NotOnSheet } when now.Value == before.Value => now with { Doubt = before.Doubt, Before = before.Before, Answer = before.Answer },
        // On a better photo the mark may be plain now, and then it speaks for itself.
        _ when now.Doubt != ScanDoubt.None => now with { Answer = before.Answer },
        _ => now,
    };
}
