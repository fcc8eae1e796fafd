using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Bench.Postures;

// Arguments: the folder of the library, the drafts, then the keys to make; all of them without a key.
if (args.Length < 2)
{
    Console.Error.WriteLine("Usage: Postures LIBRARY-FOLDER DRAFTS.TXT [KEY...]");
    return 2;
}
var isComplete = true;
foreach (var draft in DraftReader.Read(File.ReadLines(args[1])).Where(d => args.Length == 2 || args.Skip(2).Any(a => d.Key.StartsWith(a, StringComparison.Ordinal))))
{
    var (pose, missed) = Author.Pose(draft.Body);
    var posture = new Posture(draft.Key, draft.Group, pose, draft.Body.Touches) { Wall = draft.Body.Wall };
    if (draft.Partner is { } wish)
    {
        var (partner, partnerMissed) = Author.Pose(wish);
        missed = [.. missed, .. partnerMissed.Select(m => "partner " + m)];
        posture = posture with { Partner = new Partner(partner, wish.IsMirrored ? [.. wish.Touches.Select(Author.Mirrored)] : wish.Touches, wish.Joins) };
    }
    var text = PostureText.Write(posture);
    var reading = PostureText.Read(text);
    Author.Report(draft, posture, missed, reading);
    isComplete &= reading.Posture is not null;
    File.WriteAllText(Path.Combine(args[0], draft.Key + ".json"), text);
}
return isComplete ? 0 : 1;
