namespace Slantwise.Records.Checks;

internal static class CueCheck
{
    public static void Add(List<Finding> findings, string taskName, IReadOnlyList<string> cues)
    {
        if (cues.Count == 0) findings.Add(Finding.Flagged("TaskHasNoCue", taskName, Limits.CueCount));
        if (cues.Count > Limits.CueCount) findings.Add(Finding.Refused("TaskHasTooManyCues", taskName, cues.Count, Limits.CueCount));
        for (var i = 0; i < cues.Count; i++)
        {
            NameCheck.Add(findings, cues[i], Limits.CueLength, "CueEmpty", "CueTooLong", taskName, i + 1);
            for (var before = 0; before < i; before++)
            {
                if (Alike.Texts(cues[before], cues[i])) findings.Add(Finding.Flagged("CuesAlike", taskName, before + 1, i + 1));
            }
        }
    }
}
