using Crossref.Core.Records;

namespace Crossref.Site.Reading.Mapping;

/// <summary>Makes records of checked documents.</summary>
internal sealed class RecordMapper(AddressBook addresses, DiagnosticLog log)
{
    private readonly RepairMapper _repairs = new(addresses, log);

    internal IRecord Map(RawRecord raw)
    {
        var fields = new Fields(raw.Map);
        return raw.Type switch
        {
            RecordType.Library => TextMapper.Library(raw.Id, fields),
            RecordType.Family => FamilyMapper.Map(raw.Id, fields),
            RecordType.Part => PartMapper.Map(raw.Id, fields),
            RecordType.Source => TextMapper.Source(raw.Id, fields),
            RecordType.Claim => ClaimMapper.Map(raw.Id, fields),
            RecordType.Repair => _repairs.Map(raw.Id, fields),
            RecordType.Machine => StockMapper.Machine(raw.Id, fields),
            RecordType.Unit => StockMapper.Unit(raw.Id, fields, addresses),
            RecordType.Bag => StockMapper.Bag(raw.Id, fields),
            RecordType.Order => StockMapper.Order(raw.Id, fields),
            RecordType.Symptom => TextMapper.Symptom(raw.Id, fields),
            RecordType.Question => TextMapper.Question(raw.Id, fields),
            _ => throw new InvalidOperationException($"No YAML document is a {raw.Type}."),
        };
    }
}
