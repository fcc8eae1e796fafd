using System.Globalization;
using System.Text;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Import;

namespace Slantwise.Records.Tests.Units.Import;

public sealed class OutcomeFilesTests
{
    [Fact]
    public void Read_CasePackage_GivesItemsInTheOrderOfTheirAssociations()
    {
        var reading = Read("f.json", OutcomeSamples.Case());
        Assert.Empty(reading.Findings);
        Assert.Equal(("Moving well, an invention", "An invented district", LicenceStanding.Open, false), (reading.Framework, reading.Creator, reading.Standing, reading.KeepsOnlyCodes));
        // By hand: T has sequence 1 under the document, M 2; under M stand M.1 and M.2.
        Assert.Equal([("T", 0, false), ("M", 0, true), ("M.1", 1, false), ("M.2", 1, false)], reading.Candidates.Select(c => (c.Code, c.Depth, c.HasParts)));
        Assert.Equal(("Outcome", "05, 06", Guid.Parse(OutcomeSamples.Id('b'))), (reading.Candidates[2].Kind, reading.Candidates[2].Years, reading.Candidates[2].Id));
    }

    [Theory]
    [InlineData("", LicenceStanding.Unnamed)]
    [InlineData("\"licenseURI\": \"https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/\",", LicenceStanding.Open)]
    [InlineData("\"licenseURI\": {\"title\": \"Terms of use\", \"uri\": \"https://example.org/terms\"},", LicenceStanding.Closed)]
    [InlineData("\"rights\": \"© An invented district. All rights reserved.\",", LicenceStanding.Closed)]
    public void Read_CasePackageWithRights_KeepsOnlyCodesUnlessTheLicenceIsOpen(string rights, LicenceStanding expected)
    {
        var reading = Read("f.json", OutcomeSamples.Case(rights));
        Assert.Equal((expected, expected != LicenceStanding.Open), (reading.Standing, reading.KeepsOnlyCodes));
    }

    [Fact]
    public void Read_OneItemWithAnotherLicence_CountsForAll()
    {
        var closed = OutcomeSamples.Case().Replace("\"humanCodingScheme\": \"M.1\"", "\"licenseURI\": {\"title\": \"Ask first\"}, \"humanCodingScheme\": \"M.1\"", StringComparison.Ordinal);
        Assert.Equal(LicenceStanding.Closed, Read("f.json", closed).Standing);
    }

    [Fact]
    public void Take_CodesOnly_LeavesTheWordsInTheFile()
    {
        var reading = Read("f.json", OutcomeSamples.Case(""));
        var chosen = reading.Candidates.Select(c => c.Id).ToHashSet();
        var taken = reading.Take([], chosen, keepsOnlyCodes: true);
        Assert.Equal(["T", "M", "M.1", "M.2"], taken.Select(o => o.Code));
        Assert.All(taken, o => Assert.Equal(("", "Moving well, an invention"), (o.Text, o.Framework)));
        // Taking them again adds nothing.
        Assert.Equal(taken, reading.Take(taken, chosen, keepsOnlyCodes: false));
        Assert.Equal("Talking", reading.Take([], chosen, keepsOnlyCodes: false)[0].Text);
    }

    [Fact]
    public void Take_MoreThanAUnitHolds_StopsAtItsLimit()
    {
        var rows = string.Join('\n', Enumerable.Range(1, 80).Select(i => $"K{i},Words {i},Own"));
        var reading = Read("f.csv", "code,text,framework\n" + rows);
        var taken = reading.Take([new(Guid.NewGuid(), "", "mine", "")], reading.Candidates.Select(c => c.Id).ToHashSet(), keepsOnlyCodes: false);
        Assert.Equal((UnitLimits.OutcomeCount, "K59"), (taken.Count, taken[^1].Code));
    }

    [Theory]
    [InlineData("code;text;framework\nA1;\"Jumps, and lands\";Own\n", "A1", "Jumps, and lands")]
    [InlineData("Código\tTexto\tMarco\nB2\tSalta y cae\tPropio\n", "B2", "Salta y cae")]
    [InlineData("\uFEFFframework,statement,code\nOwn,Turns round,C3\n", "C3", "Turns round")]
    public void Read_TableInAnyOrder_FindsItsColumns(string text, string code, string words)
    {
        var reading = Read("f.csv", text);
        Assert.Empty(reading.Findings);
        Assert.Equal((code, words), Assert.Single(reading.Candidates.Select(c => (c.Code, c.Text))));
        Assert.Equal(LicenceStanding.Unnamed, reading.Standing);
    }

    [Theory]
    [InlineData("text\nI balance\n", LicenceStanding.Own)]
    [InlineData("code,text,licence\nA,I balance,CC BY 4.0\n", LicenceStanding.Open)]
    [InlineData("code,text,licence\nA,I balance,CC BY 4.0\nB,I roll,\n", LicenceStanding.Closed)]
    [InlineData("code,text,licence\nA,I balance,Not in the public domain\n", LicenceStanding.Closed)]
    public void Read_TableWithLicence_SaysHowItStands(string text, LicenceStanding expected) => Assert.Equal(expected, Read("f.csv", text).Standing);

    [Fact]
    public void Read_SameTableTwice_GivesTheSameIds()
    {
        const string text = "code,text,framework\nA,I balance,F\n,I roll,\n";
        Assert.Equal(Read("one.csv", text).Candidates.Select(c => c.Id), Read("two.csv", text).Candidates.Select(c => c.Id));
    }

    // What it says of each is the sentence a teacher reads, so that is what is compared.
    [Theory]
    [InlineData("", "f is empty")]
    [InlineData("{\"CFItems\": [", "f is not complete JSON; reading stopped at line 1")]
    [InlineData("{\"format\": \"slantwise-task/2\"}", "no list “CFItems” was found")]
    [InlineData("[1, 2, 3]", "no list “CFItems” was found")]
    [InlineData("{\"CFItems\": []}", "f holds no item")]
    [InlineData("{\"CFItems\": [7, null, [\"x\"]]}", "item 2 is not an item")]
    [InlineData("name,age\nAna,7\n", "code / text")]
    [InlineData("code,text\nA,\"open quote\n", "f, line 2")]
    public void Read_OddFile_SaysWhatIsWrongInASentence(string text, string said)
    {
        var reading = Read("f", text);
        Assert.DoesNotContain(reading.Candidates, c => c.CanBeTaken(false));
        Assert.Contains(said, string.Join('\n', reading.Findings.Select(f => f.Sentence(CultureInfo.GetCultureInfo("en")))), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Read_ItemsWithTroubles_SaysSoPerItem()
    {
        var text = OutcomeSamples.Case().Replace("\"Talking\"", $"\"{new string('w', 501)}\"", StringComparison.Ordinal)
            .Replace("\"humanCodingScheme\": \"M.2\"", $"\"humanCodingScheme\": \"{new string('9', 41)}\"", StringComparison.Ordinal);
        var reading = Read("f.json", text);
        var (longText, longCode) = (reading.Candidates[0], reading.Candidates[3]);
        // Too long to keep whole, so only its code; a code too long cannot stand for it.
        Assert.Equal(("", true, true), (longText.Text, longText.CanBeTaken(true), longText.CanBeTaken(false)));
        Assert.False(longCode.CanBeTaken(false));
        Assert.Contains("only the code can be kept", longText.Findings[0].Sentence(CultureInfo.GetCultureInfo("en")), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LongStatementWithShortForm_TakesTheFilesOwnShortForm()
    {
        var item = OutcomeSamples.Item('a', "L", new string('w', 501), more: ", \"abbreviatedStatement\": \"Short\"");
        Assert.Equal("Short", Read("f.json", $"{{\"CFItems\": [{item}]}}").Candidates[0].Text);
    }

    [Fact]
    public void Read_ItemsUnderEachOtherInARing_AreEachThereOnce()
    {
        var ring = $$"""{"CFItems": [{{OutcomeSamples.Item('a', "A", "one")}}, {{OutcomeSamples.Item('b', "B", "two")}}, {{OutcomeSamples.Item('c', "C", "self")}}], "CFAssociations": [{{OutcomeSamples.Child('a', OutcomeSamples.Id('b'), 1)}}, {{OutcomeSamples.Child('b', OutcomeSamples.Id('a'), 1)}}, {{OutcomeSamples.Child('c', OutcomeSamples.Id('c'), 1)}}]}""";
        Assert.Equal(["A", "B", "C"], Read("f.json", ring).Candidates.Select(c => c.Code).Order());
    }

    [Fact]
    public void Read_ChainOfThousandsAndMoreThanTheCap_StaysOnItsFeet()
    {
        var items = Enumerable.Range(0, OutcomeFiles.MostCandidates + 500).ToList();
        static string Name(int i) => $"{i:x8}-0000-4000-8000-000000000000";
        var text = $$"""{"CFItems": [{{string.Join(',', items.Select(i => $$"""{"identifier": "{{Name(i)}}", "fullStatement": "s{{i}}"}"""))}}], "CFAssociations": [{{string.Join(',', items.Skip(1).Select(i => $$"""{"associationType": "isChildOf", "originNodeURI": {"identifier": "{{Name(i)}}"}, "destinationNodeURI": {"identifier": "{{Name(i - 1)}}" } }"""))}}]}""";
        var reading = Read("f.json", text);
        Assert.Equal(OutcomeFiles.MostCandidates, reading.Candidates.Count);
        Assert.Equal(OutcomeFiles.MostCandidates, reading.Candidates.Select(c => c.Id).Distinct().Count());
        Assert.Contains(reading.Findings, f => f.Key == "OutcomeFileMany");
    }

    [Fact]
    public void Read_LargerThanTheCap_IsNotRead()
    {
        var reading = OutcomeFiles.Read("f.json", new byte[OutcomeFiles.MostBytes + 1]);
        Assert.Equal("OutcomeFileTooLarge", Assert.Single(reading.Findings).Key);
        Assert.Empty(reading.Candidates);
    }

    [Fact]
    public void Read_NestedDeeperThanAnybodyWrites_IsASentence() =>
        Assert.Equal("OutcomeFileNotJson", Assert.Single(Read("f.json", string.Concat(Enumerable.Repeat("{\"CFPackage\":", 5000))).Findings).Key);

    internal static OutcomeReading Read(string name, string text) => OutcomeFiles.Read(name, Encoding.UTF8.GetBytes(text));
}
