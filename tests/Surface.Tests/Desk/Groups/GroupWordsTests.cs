using System.Text.RegularExpressions;
using Slantwise.Desk.Words;
using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;

namespace Slantwise.Surface.Tests.Desk.Groups;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class GroupWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInThePages_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        HashSet<string> keys =
        [
            .. Enum.GetNames<GroupGoal>().Select(n => "Goal" + n), .. Enum.GetNames<PupilExperience>().Append("Nothing").SelectMany(n => new[] { "Column" + n, "Said" + n }),
            "MakeAnew", "PupilsAGroup", "NumberOfGroups", "TooManyPupils", "NoPupils", "Fix", "Free", "SaidFree", "SaidFixed",
        ];
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages", "Groups")))
        {
            var text = File.ReadAllText(file);
            foreach (Match call in (text.Contains("using static Slantwise.Desk.Words.GroupWords") ? InClass() : ByName()).Matches(text))
                keys.UnionWith(call.Groups["count"].Success ? [call.Groups["key"].Value + "One", call.Groups["key"].Value + "Many"] : [call.Groups["key"].Value]);
        }
        Assert.True(keys.Count > 60, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.DoesNotContain(keys, key => !HasWords(key));
    }

    private static bool HasWords(string key)
    {
        try { return GroupWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    [GeneratedRegex(@"\bG\.Say(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex ByName();

    [GeneratedRegex(@"\bSay(?<count>Count)?\(\s*""(?<key>[A-Za-z]+)""(?!\s*\+)")]
    private static partial Regex InClass();
}
