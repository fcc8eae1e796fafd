using System.Text;
using CsCheck;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Import;

namespace Slantwise.Records.Tests.Units.Import;

public sealed class OutcomeFilesLawTests
{
    private static readonly byte[] Sample = Encoding.UTF8.GetBytes(OutcomeSamples.Case());

    private static readonly Gen<byte[]> Cut = Gen.Int[0, Sample.Length].Select(n => Sample[..n]);

    // One byte of a good file is another, three times.
    private static readonly Gen<byte[]> Bent = Gen.Select(Gen.Int[0, Sample.Length - 1], Gen.Byte).List[1, 3].Select(changes =>
    {
        var bytes = (byte[])Sample.Clone();
        foreach (var (at, value) in changes) bytes[at] = value;
        return bytes;
    });

    private static readonly Gen<byte[]> Pieces = Gen.OneOf(
        "{", "}", "[", "]", ":", ",", "\"CFItems\"", "\"CFDocument\"", "\"CFAssociations\"", "\"identifier\"", "\"fullStatement\"", "\"humanCodingScheme\"", "\"licenseURI\"",
        "\"\\ud800\"", "\"\\u0000\"", "\"isChildOf\"", "null", "1e999", "-0", "\"\"", "code", ";", "\n", "text", "\"", "\t", "é").List[0, 30].Select(p => Encoding.UTF8.GetBytes(string.Concat(p)));

    private static readonly Gen<byte[]> AnyBytes = Gen.OneOf(Cut, Bent, Pieces, Gen.Byte.Array[0, 200], Gen.String.Select(Encoding.UTF8.GetBytes));

    [Fact]
    public void Read_AnyBytes_IsAnAnswerWithinTheLimitsOfAUnit() => AnyBytes.Sample(bytes =>
    {
        var reading = OutcomeFiles.Read("f", bytes);
        foreach (var keepsOnlyCodes in new[] { true, false })
        {
            var taken = reading.Take([], reading.Candidates.Select(c => c.Id).ToHashSet(), keepsOnlyCodes);
            var unit = new TeachingUnit { SchoolId = Guid.Empty, Id = Guid.Empty, ClassId = Guid.Empty, Name = "U", Content = new() { Outcomes = taken } };
            Assert.Equal(["UnitClassUnknown"], UnitCheck.Of(unit, []).Select(f => f.Key));
            if (keepsOnlyCodes) Assert.All(taken, o => Assert.Equal("", o.Text));
        }
        Assert.Equal(reading.Candidates.Count, reading.Candidates.Select(c => c.Id).Distinct().Count());
        if (reading.Candidates.Count == 0) Assert.NotEmpty(reading.Findings);
    }, iter: 3000);

    [Fact]
    public void Of_AnyWordsBesideAClosedLicence_AreNeverOpen() => Gen.String.Sample(words =>
        Assert.NotEqual(LicenceStanding.Open, OpenLicence.Of(["Creative Commons BY 4.0", "Terms of use", words])));
}
