namespace Slantwise.Records.Tests.Units.Import;

/// <summary>Files of outcomes, all invented. Source: [CASE2017] for the names; the sentences are ours.</summary>
internal static class OutcomeSamples
{
    public const string Document = "11111111-1111-4111-8111-111111111111";

    /// <summary>Two headings; under the second two outcomes, given in the other order than their numbers.</summary>
    public static string Case(string rights = "\"licenseURI\": {\"title\": \"CC BY 4.0\", \"identifier\": \"x\", \"uri\": \"https://creativecommons.org/licenses/by/4.0/\"},") => $$"""
        {
          "CFDocument": {
            "identifier": "{{Document}}", "uri": "https://example.org/uri/{{Document}}", "creator": "An invented district", "title": "Moving well, an invention",
            {{rights}}
            "lastChangeDateTime": "2025-01-01T00:00:00+00:00", "adoptionStatus": "Draft"
          },
          "CFItems": [
            {{Item('a', "M", "Moving", "Strand")}},
            {{Item('c', "M.2", "Lands softly from a height of her own choice", "Outcome")}},
            {{Item('b', "M.1", "Holds a shape of his own choice still", "Outcome", ", \"educationLevel\": [\"05\", \"06\"]")}},
            {{Item('d', "T", "Talking", "Strand")}}
          ],
          "CFAssociations": [
            {{Child('a', Document, 2)}}, {{Child('d', Document, 1)}}, {{Child('b', Id('a'), 1)}}, {{Child('c', Id('a'), 2)}},
            {"identifier": "99999999-9999-4999-8999-999999999999", "associationType": "isRelatedTo", "originNodeURI": {"identifier": "{{Id('b')}}"}, "destinationNodeURI": {"identifier": "{{Id('d')}}" } }
          ]
        }
        """;

    public static string Id(char letter) => $"{new string(letter, 8)}-aaaa-4aaa-8aaa-aaaaaaaaaaaa";

    public static string Item(char letter, string code, string statement, string kind = "Outcome", string more = "") =>
        $$"""{"identifier": "{{Id(letter)}}", "humanCodingScheme": "{{code}}", "fullStatement": "{{statement}}", "CFItemType": "{{kind}}"{{more}}}""";

    public static string Child(char letter, string parent, int number) =>
        $$"""{"associationType": "isChildOf", "sequenceNumber": {{number}}, "originNodeURI": {"identifier": "{{Id(letter)}}", "title": "x", "uri": "u"}, "destinationNodeURI": {"identifier": "{{parent}}", "title": "y", "uri": "v" } }""";
}
