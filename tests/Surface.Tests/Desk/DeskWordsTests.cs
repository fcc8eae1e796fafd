using System.Text.RegularExpressions;
using Slantwise.Desk.Progress;
using Slantwise.Desk.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Desk;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class DeskWordsTests
{
    [Fact]
    public void Say_EveryKeyNamedInAPage_HasWords()
    {
        var folder = Path.Combine(Root(), "src", "Desk");
        var files = Directory.EnumerateFiles(folder, "*.*", SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".razor") || f.EndsWith(".cs"))
            .Where(f => !Path.GetRelativePath(folder, f).Split(Path.DirectorySeparatorChar).Any(p => p is "obj" or "bin" or "Results" or "Evidence" or "Balance" or "Scans"));
        var missing = new List<string>();
        var seen = 0;
        foreach (var file in files)
        {
            var text = File.ReadAllText(file);
            // A door to words makes its keys itself; other doors lead to other words.
            if (text.Contains("ResourceManager") || OtherDoor().IsMatch(text)) continue;
            foreach (var (key, isCounted) in KeysIn(text))
            {
                seen++;
                foreach (var name in isCounted ? [key + "One", key + "Many"] : new[] { key })
                    if (!HasWords(name)) missing.Add($"{Path.GetRelativePath(folder, file)}: {name}");
            }
        }
        Assert.True(seen > 200, $"Only {seen} keys were found: the pages are no longer read.");
        Assert.Empty(missing);
    }

    [Fact]
    public void Say_EveryKeyMadeOfAKind_HasWords()
    {
        string[] keys =
        [
            .. All<BodyDemand>("Demand"), .. All<BodyDemand>("Without"), .. All<DoseKind>("Dose"), .. All<DoseKind>("DoseKind"),
            .. All<DoseKind>("AmountOf"), .. All<PredictionKind>("Predicts"), .. All<PhaseKind>("Phase"), .. All<PolicyChoice>("PolicyIs"),
            .. All<LessonStep>("Step"), .. All<LessonStep>("Do"), .. All<RosterItemKind>("Roster"), .. All<RosterField>("RosterField"),
            .. typeof(SafetyPolicy).GetProperties().Where(p => p.PropertyType == typeof(PolicyChoice)).SelectMany(p => new[] { "Policy" + p.Name, "Policy" + p.Name + "Hint" }),
        ];
        Assert.DoesNotContain(keys, k => !HasWords(k));
    }

    [Fact]
    public void Say_UnknownKey_Refuses() => Assert.Throws<InvalidOperationException>(() => DeskWords.Say("NoSuchKey"));

    private static IEnumerable<string> All<T>(string start)
        where T : struct, Enum => Enum.GetNames<T>().Select(name => start + name);

    private static bool HasWords(string key)
    {
        try { return DeskWords.Say(key).Length > 0; }
        catch (InvalidOperationException) { return false; }
    }

    // A literal of the first argument that nothing is added to; in a choice between two, both.
    private static IEnumerable<(string Key, bool IsCounted)> KeysIn(string text) =>
        from Match call in Call().Matches(text)
        from Match key in Literal().Matches(call.Groups["first"].Value)
        where !Joined().IsMatch(call.Groups["first"].Value)
        select (key.Groups[1].Value, call.Groups["count"].Success);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }

    [GeneratedRegex(@"using static Slantwise\.Desk\.Words\.(?!DeskWords)")]
    private static partial Regex OtherDoor();

    // Not what is said through another door by its name, as L.Say.
    [GeneratedRegex(@"(?<=\bDeskWords\.|(?<!\.))\bSay(?<count>Count)?\((?<first>(?:""[A-Za-z]+""|[^"",()]|\([^()]*\))*)")]
    private static partial Regex Call();

    [GeneratedRegex(@"""([A-Z][A-Za-z]+)""")]
    private static partial Regex Literal();

    [GeneratedRegex(@"""\s*\+|\+\s*""")]
    private static partial Regex Joined();
}
