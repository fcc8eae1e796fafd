using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Scans.Intake;

/// <summary>What of a scan's pictures stays: all of them while it waits; afterwards what the school keeps.</summary>
internal static class ScanSaves
{
    /// <summary>The save of a scan as it stands.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="pictures">All its pictures, those kept with it so far included.</param>
    /// <param name="keeping">What the school keeps.</param>
    public static ScanSave Of(Scan scan, IReadOnlyList<ScanPicture> pictures, PictureKeeping keeping)
    {
        if (scan.State == ScanState.Waiting) return new ScanSave(scan) { Pictures = pictures, ForgetsPictures = true };
        if (scan.State == ScanState.Discarded) return new ScanSave(scan) { ForgetsPictures = true };
        var items = scan.Items.ToDictionary(i => i.Key);
        var kept = new List<KeptPicture>();
        foreach (var picture in pictures)
        {
            if (scan.LessonId is not { } lessonId || SheetField.FromKey(picture.PictureKey) is not { } field || ScanFacts.PupilOf(scan, field) is not { } pupilId) continue;
            var isReviewed = items.GetValueOrDefault(picture.PictureKey) is { Answer: not null };
            // Whose sheet it is stands in the record; the name by hand was for finding that out.
            var isWords = keeping.KeepsWords && scan.Writings.Contains(picture.PictureKey) && field.Kind != SheetFieldKind.Name;
            if (isReviewed || isWords) kept.Add(new KeptPicture(scan.SchoolId, lessonId, pupilId, picture.PictureKey, picture.Bytes));
        }
        // Seconds by hand hold nothing up and can be typed later: their box stays until somebody has said what it is, or that it is not wanted.
        var open = scan.Items.Where(i => i is { Doubt: ScanDoubt.ByHand, Answer: null }).Select(i => i.Key).ToHashSet();
        var stay = pictures.Where(p => open.Contains(p.PictureKey) || (keeping.KeepsPhotos && p.PictureKey == ScanPicture.Photo)).ToList();
        return new ScanSave(scan) { Kept = kept, Pictures = stay, ForgetsPictures = true };
    }
}
