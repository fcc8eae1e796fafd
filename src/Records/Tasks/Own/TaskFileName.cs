using System.Globalization;
using System.Text;

namespace Slantwise.Records.Tasks.Own;

/// <summary>What a task's file is called: its name in small letters that every system takes.</summary>
public static class TaskFileName
{
    private const int LengthMost = 60;

    /// <summary>A file's name: "one-foot-balance.json".</summary>
    /// <param name="taskName">What the task is called.</param>
    public static string Of(string taskName)
    {
        var made = new StringBuilder();
        foreach (var letter in taskName.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (char.IsAsciiLetterOrDigit(letter)) made.Append(char.ToLowerInvariant(letter));
            else if (made.Length > 0 && made[^1] != '-') made.Append('-');
        }
        var name = made.ToString().Trim('-');
        return (name.Length == 0 ? "task" : name.Length > LengthMost ? name[..LengthMost].TrimEnd('-') : name) + ".json";
    }
}
