namespace Slantwise.Records.Checks;

/// <summary>Whether how a pupil does a task can be kept.</summary>
public static class AdaptationCheck
{
    /// <summary>Looks at the words.</summary>
    /// <param name="text">What to do, in pupil words.</param>
    /// <returns>Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(string text)
    {
        var findings = new List<Finding>();
        NameCheck.Add(findings, text, Limits.AdaptationLength, "AdaptationEmpty", "AdaptationTooLong");
        return findings;
    }
}
