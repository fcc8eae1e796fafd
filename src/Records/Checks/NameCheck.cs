namespace Slantwise.Records.Checks;

internal static class NameCheck
{
    /// <summary>Refuses a name that is empty, too long, or holds characters nobody can see.</summary>
    /// <param name="arguments">What leads the sentence; the length allowed follows.</param>
    public static void Add(List<Finding> findings, string? name, int lengthMost, string emptyKey, string tooLongKey, params object[] arguments)
    {
        if (string.IsNullOrWhiteSpace(name)) findings.Add(Finding.Refused(emptyKey, [.. arguments, lengthMost]));
        else if (name.Length > lengthMost) findings.Add(Finding.Refused(tooLongKey, [.. arguments, lengthMost, name.Length]));
        else if (TextCheck.HasControl(name)) findings.Add(Finding.Refused("TextHasControl", TextCheck.Visible(name)));
    }
}
