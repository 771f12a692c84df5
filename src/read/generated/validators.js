/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */
// <stdin>
var estate = validate20, schema31 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "estate.json", title: "EstateFile", description: "An estate file: servers, volumes, attachments, volume groups, file systems, retired volumes.", type: "object", additionalProperties: !1, properties: { team: { $ref: "common.json#/$defs/name", description: "The team that everything in this file belongs to, unless it names its own." }, site: { $ref: "common.json#/$defs/name", description: "The site that everything in this file is at, unless it names its own." }, labels: { $ref: "common.json#/$defs/labels", description: "Labels that everything in this file carries, unless it sets the same label itself." }, servers: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The servers, by name.", additionalProperties: { title: "ServerDeclaration", type: "object", additionalProperties: !1, description: "One server.", properties: { power: { type: "string", enum: ["running", "stopped"], default: "running", description: "Whether the server runs. A stopped server may still be billed." }, boot: { $ref: "common.json#/$defs/name", description: "The volume the server starts from. It counts as attached." }, guest: { type: "string", enum: ["linux-lvm", "linux", "windows", "other"], description: "What runs inside, which decides how the guest is made to see a change." }, machine: { $ref: "common.json#/$defs/name", description: "The machine in the price list that this server is billed as." }, io: { type: "integer", minimum: 0, description: "Input and output operations a second that the work on this server needs from its volumes together." }, "attachment-slots": { type: "integer", minimum: 0, description: "How many volumes this server can hold, where it differs from its site's." }, team: { $ref: "common.json#/$defs/name", description: "The team that answers for the server and its cost." }, site: { $ref: "common.json#/$defs/name", description: "The site the server is at." }, labels: { $ref: "common.json#/$defs/labels" }, formerly: { $ref: "common.json#/$defs/name", description: "The server's name before this change, so that a rename is no deletion." } } } }, volumes: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The volumes, by name.", additionalProperties: { title: "VolumeDeclaration", type: "object", additionalProperties: !1, required: ["size", "tier"], description: "One volume.", properties: { size: { $ref: "common.json#/$defs/size", description: "What is bought: a number with its unit, such as 50 GiB." }, tier: { $ref: "common.json#/$defs/name", description: "The tier in the price list." }, shareable: { type: "boolean", default: !1, description: "Whether the provider lets several servers hold it at once." }, protected: { type: "boolean", default: !1, description: "A protected volume is not to be deleted; the protection is lifted in a change of its own first." }, owner: { $ref: "common.json#/$defs/sentence", description: "The person or role that answers for a detached volume; the team stands in where none is named." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why a detached volume is kept." }, "retain-until": { $ref: "common.json#/$defs/date", description: "The day until which a detached volume is kept." }, "file-system": { $ref: "#/$defs/wholeVolumeFileSystem" }, team: { $ref: "common.json#/$defs/name", description: "The team that answers for the volume and its cost." }, site: { $ref: "common.json#/$defs/name", description: "The site the volume is at." }, labels: { $ref: "common.json#/$defs/labels" }, formerly: { $ref: "common.json#/$defs/name", description: "The volume's name before this change, so that a rename is no deletion." } } } }, attachments: { type: "array", description: "Which volume is attached to which server. A boot volume needs no entry.", items: { title: "AttachmentDeclaration", type: "object", additionalProperties: !1, required: ["volume", "server"], description: "One volume on one server.", properties: { volume: { $ref: "common.json#/$defs/name", description: "The volume." }, server: { $ref: "common.json#/$defs/name", description: "The server it is attached to." } } } }, "volume-groups": { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The volume groups, by name.", additionalProperties: { title: "VolumeGroupDeclaration", type: "object", additionalProperties: !1, required: ["members"], description: "Volumes that are used as one. The group travels whole.", properties: { extent: { $ref: "common.json#/$defs/size", default: "4 MiB", description: "The group's extent, in which it gives space out." }, members: { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" }, description: "The volumes in the group." }, layout: { type: "string", enum: ["linear", "striped", "mirrored"], default: "linear", description: "How the group's file systems lie on its members." }, stripes: { type: "integer", minimum: 2, description: "Over how many members a striped layout spreads; all of them where left out." }, copies: { type: "integer", minimum: 2, default: 2, description: "How many whole copies a mirrored layout keeps." }, "file-systems": { type: "object", description: "The file systems in the group, by mount point.", propertyNames: { $ref: "#/$defs/mountPoint" }, additionalProperties: { title: "FileSystemDeclaration", type: "object", additionalProperties: !1, required: ["size", "type"], description: "One file system on its own logical volume.", properties: { size: { $ref: "common.json#/$defs/size", description: "The size of the logical volume it lies on." }, type: { $ref: "#/$defs/fileSystemType" } } } }, team: { $ref: "common.json#/$defs/name", description: "The team that answers for the group." }, labels: { $ref: "common.json#/$defs/labels" }, formerly: { $ref: "common.json#/$defs/name", description: "The group's name before this change, so that a rename is no deletion." } } } }, retired: { type: "array", description: "Volumes that were deleted, each with its reason and its evidence.", items: { title: "RetiredDeclaration", type: "object", additionalProperties: !1, required: ["volume", "on", "reason"], description: "One deletion, put on record.", properties: { volume: { $ref: "common.json#/$defs/name", description: "The volume that is gone." }, on: { $ref: "common.json#/$defs/date", description: "The day of the deletion." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why nobody needs it." }, backup: { $ref: "common.json#/$defs/sentence", description: "Where the last backup lies." }, "backed-up": { $ref: "common.json#/$defs/date", description: "The day of that backup." } } } } }, $defs: { mountPoint: { title: "MountPoint", type: "string", pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", description: "Where the guest mounts it: an absolute path, a drive letter such as D:, or swap." }, fileSystemType: { title: "FileSystemType", type: "string", enum: ["ext2", "ext3", "ext4", "xfs", "btrfs", "ntfs", "vfat", "gfs2", "ocfs2", "swap"], description: "The file system's type, which decides whether it can shrink and whether two servers may mount it." }, wholeVolumeFileSystem: { title: "WholeVolumeFileSystemDeclaration", type: "object", additionalProperties: !1, required: ["mount", "type"], description: "The file system that lies on this volume by itself, outside any group.", properties: { mount: { $ref: "#/$defs/mountPoint" }, type: { $ref: "#/$defs/fileSystemType" }, size: { $ref: "common.json#/$defs/size", description: "The size it was made or grown to; the whole volume where left out." } } } } }, schema33 = { title: "Name", type: "string", pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", description: "A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters." }, schema44 = { title: "Size", type: "string", pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", description: "A size with its unit: 50 GiB (IEC 80000-13, 1024-based) or 50 GB (SI, 1000-based). A bare number is refused.", examples: ["50 GiB", "1.5 TiB", "500 GB"] }, schema46 = { title: "Sentence", type: "string", pattern: "\\S", description: "A few words that say why; it may not be blank." }, schema48 = { title: "Date", type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", description: "A full date as RFC 3339 writes it, such as 2026-11-20.", examples: ["2026-11-20"] }, schema50 = { title: "MountPoint", type: "string", pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", description: "Where the guest mounts it: an absolute path, a drive letter such as D:, or swap." }, schema51 = { title: "FileSystemType", type: "string", enum: ["ext2", "ext3", "ext4", "xfs", "btrfs", "ntfs", "vfat", "gfs2", "ocfs2", "swap"], description: "The file system's type, which decides whether it can shrink and whether two servers may mount it." }, pattern4 = new RegExp("^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", "u"), pattern14 = new RegExp("^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", "u"), pattern16 = new RegExp("\\S", "u"), pattern18 = new RegExp("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", "u"), pattern19 = new RegExp("^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", "u"), schema35 = { title: "Labels", type: "object", propertyNames: { $ref: "#/$defs/name" }, additionalProperties: { type: "string" }, description: "Labels of your own, name to text; limits and rules can choose by them." };
function validate22(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate22.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data) {
      let _errs1 = errors;
      if (typeof key0 == "string") {
        if (!pattern4.test(key0)) {
          let err0 = { instancePath, schemaPath: "#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key0, propertyName: key0 };
          vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
        }
      } else {
        let err1 = { instancePath, schemaPath: "#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key0, propertyName: key0 };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
      var valid0 = _errs1 === errors;
      if (!valid0) {
        let err2 = { instancePath, schemaPath: "#/propertyNames", keyword: "propertyNames", params: { propertyName: key0 }, message: "property name must be valid", schema: schema35.propertyNames, parentSchema: schema35, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
    for (let key1 in data) {
      let data0 = data[key1];
      if (typeof data0 != "string") {
        let err3 = { instancePath: instancePath + "/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/additionalProperties/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema35.additionalProperties.type, parentSchema: schema35.additionalProperties, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
  } else {
    let err4 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema35.type, parentSchema: schema35, data };
    vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
  }
  return validate22.errors = vErrors, errors === 0;
}
validate22.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var schema49 = { title: "WholeVolumeFileSystemDeclaration", type: "object", additionalProperties: !1, required: ["mount", "type"], description: "The file system that lies on this volume by itself, outside any group.", properties: { mount: { $ref: "#/$defs/mountPoint" }, type: { $ref: "#/$defs/fileSystemType" }, size: { $ref: "common.json#/$defs/size", description: "The size it was made or grown to; the whole volume where left out." } } };
function validate25(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate25.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.mount === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "mount" }, message: "must have required property 'mount'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.type === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema49.required, parentSchema: schema49, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "mount" || key0 === "type" || key0 === "size")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema49, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.mount !== void 0) {
      let data0 = data.mount;
      if (typeof data0 == "string") {
        if (!pattern19.test(data0)) {
          let err3 = { instancePath: instancePath + "/mount", schemaPath: "#/$defs/mountPoint/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$"', schema: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", parentSchema: schema50, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/mount", schemaPath: "#/$defs/mountPoint/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema50.type, parentSchema: schema50, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.type !== void 0) {
      let data1 = data.type;
      if (typeof data1 != "string") {
        let err5 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/fileSystemType/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema51.type, parentSchema: schema51, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
      if (!(data1 === "ext2" || data1 === "ext3" || data1 === "ext4" || data1 === "xfs" || data1 === "btrfs" || data1 === "ntfs" || data1 === "vfat" || data1 === "gfs2" || data1 === "ocfs2" || data1 === "swap")) {
        let err6 = { instancePath: instancePath + "/type", schemaPath: "#/$defs/fileSystemType/enum", keyword: "enum", params: { allowedValues: schema51.enum }, message: "must be equal to one of the allowed values", schema: schema51.enum, parentSchema: schema51, data: data1 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.size !== void 0) {
      let data2 = data.size;
      if (typeof data2 == "string") {
        if (!pattern14.test(data2)) {
          let err7 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data2 };
          vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
        }
      } else {
        let err8 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data2 };
        vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
      }
    }
  } else {
    let err9 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema49.type, parentSchema: schema49, data };
    vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
  }
  return validate25.errors = vErrors, errors === 0;
}
validate25.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var func1 = Object.prototype.hasOwnProperty;
function validate20(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate20.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "team" || key0 === "site" || key0 === "labels" || key0 === "servers" || key0 === "volumes" || key0 === "attachments" || key0 === "volume-groups" || key0 === "retired")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.team !== void 0) {
      let data0 = data.team;
      if (typeof data0 == "string") {
        if (!pattern4.test(data0)) {
          let err1 = { instancePath: instancePath + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data0 };
          vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
        }
      } else {
        let err2 = { instancePath: instancePath + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data0 };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
    if (data.site !== void 0) {
      let data1 = data.site;
      if (typeof data1 == "string") {
        if (!pattern4.test(data1)) {
          let err3 = { instancePath: instancePath + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data1 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data1 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.labels !== void 0 && (validate22(data.labels, { instancePath: instancePath + "/labels", parentData: data, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors), errors = vErrors.length)), data.servers !== void 0) {
      let data3 = data.servers;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        for (let key1 in data3) {
          let _errs11 = errors;
          if (typeof key1 == "string") {
            if (!pattern4.test(key1)) {
              let err5 = { instancePath: instancePath + "/servers", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
          } else {
            let err6 = { instancePath: instancePath + "/servers", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
          }
          var valid3 = _errs11 === errors;
          if (!valid3) {
            let err7 = { instancePath: instancePath + "/servers", schemaPath: "#/properties/servers/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema31.properties.servers.propertyNames, parentSchema: schema31.properties.servers, data: data3 };
            vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
          }
        }
        for (let key2 in data3) {
          let data4 = data3[key2];
          if (data4 && typeof data4 == "object" && !Array.isArray(data4)) {
            for (let key3 in data4)
              if (!func1.call(schema31.properties.servers.additionalProperties.properties, key3)) {
                let err8 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/servers/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties.servers.additionalProperties, data: data4 };
                vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
              }
            if (data4.power !== void 0) {
              let data5 = data4.power;
              if (typeof data5 != "string") {
                let err9 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/power", schemaPath: "#/properties/servers/additionalProperties/properties/power/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.servers.additionalProperties.properties.power.type, parentSchema: schema31.properties.servers.additionalProperties.properties.power, data: data5 };
                vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
              }
              if (!(data5 === "running" || data5 === "stopped")) {
                let err10 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/power", schemaPath: "#/properties/servers/additionalProperties/properties/power/enum", keyword: "enum", params: { allowedValues: schema31.properties.servers.additionalProperties.properties.power.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.servers.additionalProperties.properties.power.enum, parentSchema: schema31.properties.servers.additionalProperties.properties.power, data: data5 };
                vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
              }
            }
            if (data4.boot !== void 0) {
              let data6 = data4.boot;
              if (typeof data6 == "string") {
                if (!pattern4.test(data6)) {
                  let err11 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/boot", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data6 };
                  vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
                }
              } else {
                let err12 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/boot", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data6 };
                vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
              }
            }
            if (data4.guest !== void 0) {
              let data7 = data4.guest;
              if (typeof data7 != "string") {
                let err13 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/guest", schemaPath: "#/properties/servers/additionalProperties/properties/guest/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties.servers.additionalProperties.properties.guest.type, parentSchema: schema31.properties.servers.additionalProperties.properties.guest, data: data7 };
                vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
              }
              if (!(data7 === "linux-lvm" || data7 === "linux" || data7 === "windows" || data7 === "other")) {
                let err14 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/guest", schemaPath: "#/properties/servers/additionalProperties/properties/guest/enum", keyword: "enum", params: { allowedValues: schema31.properties.servers.additionalProperties.properties.guest.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties.servers.additionalProperties.properties.guest.enum, parentSchema: schema31.properties.servers.additionalProperties.properties.guest, data: data7 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            }
            if (data4.machine !== void 0) {
              let data8 = data4.machine;
              if (typeof data8 == "string") {
                if (!pattern4.test(data8)) {
                  let err15 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/machine", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data8 };
                  vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
                }
              } else {
                let err16 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/machine", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data8 };
                vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
              }
            }
            if (data4.io !== void 0) {
              let data9 = data4.io;
              if (!(typeof data9 == "number" && !(data9 % 1) && !isNaN(data9) && isFinite(data9))) {
                let err17 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io", schemaPath: "#/properties/servers/additionalProperties/properties/io/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema31.properties.servers.additionalProperties.properties.io.type, parentSchema: schema31.properties.servers.additionalProperties.properties.io, data: data9 };
                vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
              }
              if (typeof data9 == "number" && isFinite(data9) && (data9 < 0 || isNaN(data9))) {
                let err18 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io", schemaPath: "#/properties/servers/additionalProperties/properties/io/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema31.properties.servers.additionalProperties.properties.io, data: data9 };
                vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
              }
            }
            if (data4["attachment-slots"] !== void 0) {
              let data10 = data4["attachment-slots"];
              if (!(typeof data10 == "number" && !(data10 % 1) && !isNaN(data10) && isFinite(data10))) {
                let err19 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/servers/additionalProperties/properties/attachment-slots/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema31.properties.servers.additionalProperties.properties["attachment-slots"].type, parentSchema: schema31.properties.servers.additionalProperties.properties["attachment-slots"], data: data10 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
              if (typeof data10 == "number" && isFinite(data10) && (data10 < 0 || isNaN(data10))) {
                let err20 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/servers/additionalProperties/properties/attachment-slots/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema31.properties.servers.additionalProperties.properties["attachment-slots"], data: data10 };
                vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
              }
            }
            if (data4.team !== void 0) {
              let data11 = data4.team;
              if (typeof data11 == "string") {
                if (!pattern4.test(data11)) {
                  let err21 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data11 };
                  vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                }
              } else {
                let err22 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data11 };
                vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
              }
            }
            if (data4.site !== void 0) {
              let data12 = data4.site;
              if (typeof data12 == "string") {
                if (!pattern4.test(data12)) {
                  let err23 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data12 };
                  vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                }
              } else {
                let err24 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data12 };
                vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
              }
            }
            if (data4.labels !== void 0 && (validate22(data4.labels, { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data4, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors), errors = vErrors.length)), data4.formerly !== void 0) {
              let data14 = data4.formerly;
              if (typeof data14 == "string") {
                if (!pattern4.test(data14)) {
                  let err25 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data14 };
                  vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
                }
              } else {
                let err26 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data14 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
            }
          } else {
            let err27 = { instancePath: instancePath + "/servers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/servers/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.servers.additionalProperties.type, parentSchema: schema31.properties.servers.additionalProperties, data: data4 };
            vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
          }
        }
      } else {
        let err28 = { instancePath: instancePath + "/servers", schemaPath: "#/properties/servers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.servers.type, parentSchema: schema31.properties.servers, data: data3 };
        vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
      }
    }
    if (data.volumes !== void 0) {
      let data15 = data.volumes;
      if (data15 && typeof data15 == "object" && !Array.isArray(data15)) {
        for (let key4 in data15) {
          let _errs44 = errors;
          if (typeof key4 == "string") {
            if (!pattern4.test(key4)) {
              let err29 = { instancePath: instancePath + "/volumes", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key4, propertyName: key4 };
              vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
            }
          } else {
            let err30 = { instancePath: instancePath + "/volumes", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key4, propertyName: key4 };
            vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
          }
          var valid12 = _errs44 === errors;
          if (!valid12) {
            let err31 = { instancePath: instancePath + "/volumes", schemaPath: "#/properties/volumes/propertyNames", keyword: "propertyNames", params: { propertyName: key4 }, message: "property name must be valid", schema: schema31.properties.volumes.propertyNames, parentSchema: schema31.properties.volumes, data: data15 };
            vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
          }
        }
        for (let key5 in data15) {
          let data16 = data15[key5];
          if (data16 && typeof data16 == "object" && !Array.isArray(data16)) {
            if (data16.size === void 0) {
              let err32 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema31.properties.volumes.additionalProperties.required, parentSchema: schema31.properties.volumes.additionalProperties, data: data16 };
              vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
            }
            if (data16.tier === void 0) {
              let err33 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/required", keyword: "required", params: { missingProperty: "tier" }, message: "must have required property 'tier'", schema: schema31.properties.volumes.additionalProperties.required, parentSchema: schema31.properties.volumes.additionalProperties, data: data16 };
              vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
            }
            for (let key6 in data16)
              if (!func1.call(schema31.properties.volumes.additionalProperties.properties, key6)) {
                let err34 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties.volumes.additionalProperties, data: data16 };
                vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
              }
            if (data16.size !== void 0) {
              let data17 = data16.size;
              if (typeof data17 == "string") {
                if (!pattern14.test(data17)) {
                  let err35 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data17 };
                  vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
                }
              } else {
                let err36 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data17 };
                vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
              }
            }
            if (data16.tier !== void 0) {
              let data18 = data16.tier;
              if (typeof data18 == "string") {
                if (!pattern4.test(data18)) {
                  let err37 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/tier", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data18 };
                  vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
                }
              } else {
                let err38 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/tier", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data18 };
                vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
              }
            }
            if (data16.shareable !== void 0) {
              let data19 = data16.shareable;
              if (typeof data19 != "boolean") {
                let err39 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/shareable", schemaPath: "#/properties/volumes/additionalProperties/properties/shareable/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema31.properties.volumes.additionalProperties.properties.shareable.type, parentSchema: schema31.properties.volumes.additionalProperties.properties.shareable, data: data19 };
                vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
              }
            }
            if (data16.protected !== void 0) {
              let data20 = data16.protected;
              if (typeof data20 != "boolean") {
                let err40 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/protected", schemaPath: "#/properties/volumes/additionalProperties/properties/protected/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema31.properties.volumes.additionalProperties.properties.protected.type, parentSchema: schema31.properties.volumes.additionalProperties.properties.protected, data: data20 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
              }
            }
            if (data16.owner !== void 0) {
              let data21 = data16.owner;
              if (typeof data21 == "string") {
                if (!pattern16.test(data21)) {
                  let err41 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/owner", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data21 };
                  vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
                }
              } else {
                let err42 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/owner", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data21 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
            }
            if (data16.reason !== void 0) {
              let data22 = data16.reason;
              if (typeof data22 == "string") {
                if (!pattern16.test(data22)) {
                  let err43 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data22 };
                  vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
                }
              } else {
                let err44 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data22 };
                vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
              }
            }
            if (data16["retain-until"] !== void 0) {
              let data23 = data16["retain-until"];
              if (typeof data23 == "string") {
                if (!pattern18.test(data23)) {
                  let err45 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/retain-until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data23 };
                  vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
                }
              } else {
                let err46 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/retain-until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data23 };
                vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
              }
            }
            if (data16["file-system"] !== void 0 && (validate25(data16["file-system"], { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-system", parentData: data16, parentDataProperty: "file-system", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate25.errors : vErrors.concat(validate25.errors), errors = vErrors.length)), data16.team !== void 0) {
              let data25 = data16.team;
              if (typeof data25 == "string") {
                if (!pattern4.test(data25)) {
                  let err47 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data25 };
                  vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
                }
              } else {
                let err48 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data25 };
                vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
              }
            }
            if (data16.site !== void 0) {
              let data26 = data16.site;
              if (typeof data26 == "string") {
                if (!pattern4.test(data26)) {
                  let err49 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data26 };
                  vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
                }
              } else {
                let err50 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/site", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data26 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            }
            if (data16.labels !== void 0 && (validate22(data16.labels, { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data16, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors), errors = vErrors.length)), data16.formerly !== void 0) {
              let data28 = data16.formerly;
              if (typeof data28 == "string") {
                if (!pattern4.test(data28)) {
                  let err51 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data28 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
              } else {
                let err52 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data28 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
          } else {
            let err53 = { instancePath: instancePath + "/volumes/" + key5.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volumes/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.volumes.additionalProperties.type, parentSchema: schema31.properties.volumes.additionalProperties, data: data16 };
            vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
          }
        }
      } else {
        let err54 = { instancePath: instancePath + "/volumes", schemaPath: "#/properties/volumes/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.volumes.type, parentSchema: schema31.properties.volumes, data: data15 };
        vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
      }
    }
    if (data.attachments !== void 0) {
      let data29 = data.attachments;
      if (Array.isArray(data29)) {
        let len0 = data29.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data30 = data29[i0];
          if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
            if (data30.volume === void 0) {
              let err55 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/required", keyword: "required", params: { missingProperty: "volume" }, message: "must have required property 'volume'", schema: schema31.properties.attachments.items.required, parentSchema: schema31.properties.attachments.items, data: data30 };
              vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
            }
            if (data30.server === void 0) {
              let err56 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/required", keyword: "required", params: { missingProperty: "server" }, message: "must have required property 'server'", schema: schema31.properties.attachments.items.required, parentSchema: schema31.properties.attachments.items, data: data30 };
              vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
            }
            for (let key7 in data30)
              if (!(key7 === "volume" || key7 === "server")) {
                let err57 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties.attachments.items, data: data30 };
                vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
              }
            if (data30.volume !== void 0) {
              let data31 = data30.volume;
              if (typeof data31 == "string") {
                if (!pattern4.test(data31)) {
                  let err58 = { instancePath: instancePath + "/attachments/" + i0 + "/volume", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data31 };
                  vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
                }
              } else {
                let err59 = { instancePath: instancePath + "/attachments/" + i0 + "/volume", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data31 };
                vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
              }
            }
            if (data30.server !== void 0) {
              let data32 = data30.server;
              if (typeof data32 == "string") {
                if (!pattern4.test(data32)) {
                  let err60 = { instancePath: instancePath + "/attachments/" + i0 + "/server", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data32 };
                  vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
                }
              } else {
                let err61 = { instancePath: instancePath + "/attachments/" + i0 + "/server", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data32 };
                vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
              }
            }
          } else {
            let err62 = { instancePath: instancePath + "/attachments/" + i0, schemaPath: "#/properties/attachments/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.attachments.items.type, parentSchema: schema31.properties.attachments.items, data: data30 };
            vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
          }
        }
      } else {
        let err63 = { instancePath: instancePath + "/attachments", schemaPath: "#/properties/attachments/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.attachments.type, parentSchema: schema31.properties.attachments, data: data29 };
        vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
      }
    }
    if (data["volume-groups"] !== void 0) {
      let data33 = data["volume-groups"];
      if (data33 && typeof data33 == "object" && !Array.isArray(data33)) {
        for (let key8 in data33) {
          let _errs94 = errors;
          if (typeof key8 == "string") {
            if (!pattern4.test(key8)) {
              let err64 = { instancePath: instancePath + "/volume-groups", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key8, propertyName: key8 };
              vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
            }
          } else {
            let err65 = { instancePath: instancePath + "/volume-groups", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key8, propertyName: key8 };
            vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
          }
          var valid29 = _errs94 === errors;
          if (!valid29) {
            let err66 = { instancePath: instancePath + "/volume-groups", schemaPath: "#/properties/volume-groups/propertyNames", keyword: "propertyNames", params: { propertyName: key8 }, message: "property name must be valid", schema: schema31.properties["volume-groups"].propertyNames, parentSchema: schema31.properties["volume-groups"], data: data33 };
            vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
          }
        }
        for (let key9 in data33) {
          let data34 = data33[key9];
          if (data34 && typeof data34 == "object" && !Array.isArray(data34)) {
            if (data34.members === void 0) {
              let err67 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/required", keyword: "required", params: { missingProperty: "members" }, message: "must have required property 'members'", schema: schema31.properties["volume-groups"].additionalProperties.required, parentSchema: schema31.properties["volume-groups"].additionalProperties, data: data34 };
              vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
            }
            for (let key10 in data34)
              if (!func1.call(schema31.properties["volume-groups"].additionalProperties.properties, key10)) {
                let err68 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties["volume-groups"].additionalProperties, data: data34 };
                vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
              }
            if (data34.extent !== void 0) {
              let data35 = data34.extent;
              if (typeof data35 == "string") {
                if (!pattern14.test(data35)) {
                  let err69 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/extent", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data35 };
                  vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
                }
              } else {
                let err70 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/extent", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data35 };
                vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
              }
            }
            if (data34.members !== void 0) {
              let data36 = data34.members;
              if (Array.isArray(data36)) {
                if (data36.length < 1) {
                  let err71 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members", schemaPath: "#/properties/volume-groups/additionalProperties/properties/members/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.members, data: data36 };
                  vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
                }
                let len1 = data36.length;
                for (let i1 = 0; i1 < len1; i1++) {
                  let data37 = data36[i1];
                  if (typeof data37 == "string") {
                    if (!pattern4.test(data37)) {
                      let err72 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members/" + i1, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data37 };
                      vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
                    }
                  } else {
                    let err73 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members/" + i1, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data37 };
                    vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
                  }
                }
              } else {
                let err74 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/members", schemaPath: "#/properties/volume-groups/additionalProperties/properties/members/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties["volume-groups"].additionalProperties.properties.members.type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.members, data: data36 };
                vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
              }
            }
            if (data34.layout !== void 0) {
              let data38 = data34.layout;
              if (typeof data38 != "string") {
                let err75 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/layout", schemaPath: "#/properties/volume-groups/additionalProperties/properties/layout/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema31.properties["volume-groups"].additionalProperties.properties.layout.type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.layout, data: data38 };
                vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
              }
              if (!(data38 === "linear" || data38 === "striped" || data38 === "mirrored")) {
                let err76 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/layout", schemaPath: "#/properties/volume-groups/additionalProperties/properties/layout/enum", keyword: "enum", params: { allowedValues: schema31.properties["volume-groups"].additionalProperties.properties.layout.enum }, message: "must be equal to one of the allowed values", schema: schema31.properties["volume-groups"].additionalProperties.properties.layout.enum, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.layout, data: data38 };
                vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
              }
            }
            if (data34.stripes !== void 0) {
              let data39 = data34.stripes;
              if (!(typeof data39 == "number" && !(data39 % 1) && !isNaN(data39) && isFinite(data39))) {
                let err77 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/stripes", schemaPath: "#/properties/volume-groups/additionalProperties/properties/stripes/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema31.properties["volume-groups"].additionalProperties.properties.stripes.type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.stripes, data: data39 };
                vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
              }
              if (typeof data39 == "number" && isFinite(data39) && (data39 < 2 || isNaN(data39))) {
                let err78 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/stripes", schemaPath: "#/properties/volume-groups/additionalProperties/properties/stripes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2", schema: 2, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.stripes, data: data39 };
                vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
              }
            }
            if (data34.copies !== void 0) {
              let data40 = data34.copies;
              if (!(typeof data40 == "number" && !(data40 % 1) && !isNaN(data40) && isFinite(data40))) {
                let err79 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/copies", schemaPath: "#/properties/volume-groups/additionalProperties/properties/copies/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema31.properties["volume-groups"].additionalProperties.properties.copies.type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.copies, data: data40 };
                vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
              }
              if (typeof data40 == "number" && isFinite(data40) && (data40 < 2 || isNaN(data40))) {
                let err80 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/copies", schemaPath: "#/properties/volume-groups/additionalProperties/properties/copies/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2", schema: 2, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties.copies, data: data40 };
                vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
              }
            }
            if (data34["file-systems"] !== void 0) {
              let data41 = data34["file-systems"];
              if (data41 && typeof data41 == "object" && !Array.isArray(data41)) {
                for (let key11 in data41) {
                  let _errs117 = errors;
                  if (typeof key11 == "string") {
                    if (!pattern19.test(key11)) {
                      let err81 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/$defs/mountPoint/pattern", keyword: "pattern", params: { pattern: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$" }, message: 'must match pattern "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$"', schema: "^(/[^\\u0000-\\u001f]*|[A-Z]:(\\\\[^\\u0000-\\u001f]*)?|swap)$", parentSchema: schema50, data: key11, propertyName: key11 };
                      vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
                    }
                  } else {
                    let err82 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/$defs/mountPoint/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema50.type, parentSchema: schema50, data: key11, propertyName: key11 };
                    vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
                  }
                  var valid37 = _errs117 === errors;
                  if (!valid37) {
                    let err83 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/propertyNames", keyword: "propertyNames", params: { propertyName: key11 }, message: "property name must be valid", schema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].propertyNames, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"], data: data41 };
                    vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
                  }
                }
                for (let key12 in data41) {
                  let data42 = data41[key12];
                  if (data42 && typeof data42 == "object" && !Array.isArray(data42)) {
                    if (data42.size === void 0) {
                      let err84 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/required", keyword: "required", params: { missingProperty: "size" }, message: "must have required property 'size'", schema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.required, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data42 };
                      vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
                    }
                    if (data42.type === void 0) {
                      let err85 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/required", keyword: "required", params: { missingProperty: "type" }, message: "must have required property 'type'", schema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.required, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data42 };
                      vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
                    }
                    for (let key13 in data42)
                      if (!(key13 === "size" || key13 === "type")) {
                        let err86 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data42 };
                        vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
                      }
                    if (data42.size !== void 0) {
                      let data43 = data42.size;
                      if (typeof data43 == "string") {
                        if (!pattern14.test(data43)) {
                          let err87 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data43 };
                          vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
                        }
                      } else {
                        let err88 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data43 };
                        vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
                      }
                    }
                    if (data42.type !== void 0) {
                      let data44 = data42.type;
                      if (typeof data44 != "string") {
                        let err89 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "#/$defs/fileSystemType/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema51.type, parentSchema: schema51, data: data44 };
                        vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
                      }
                      if (!(data44 === "ext2" || data44 === "ext3" || data44 === "ext4" || data44 === "xfs" || data44 === "btrfs" || data44 === "ntfs" || data44 === "vfat" || data44 === "gfs2" || data44 === "ocfs2" || data44 === "swap")) {
                        let err90 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1") + "/type", schemaPath: "#/$defs/fileSystemType/enum", keyword: "enum", params: { allowedValues: schema51.enum }, message: "must be equal to one of the allowed values", schema: schema51.enum, parentSchema: schema51, data: data44 };
                        vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
                      }
                    }
                  } else {
                    let err91 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems/" + key12.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties.type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].additionalProperties, data: data42 };
                    vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
                  }
                }
              } else {
                let err92 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/file-systems", schemaPath: "#/properties/volume-groups/additionalProperties/properties/file-systems/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"].type, parentSchema: schema31.properties["volume-groups"].additionalProperties.properties["file-systems"], data: data41 };
                vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
              }
            }
            if (data34.team !== void 0) {
              let data45 = data34.team;
              if (typeof data45 == "string") {
                if (!pattern4.test(data45)) {
                  let err93 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data45 };
                  vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
                }
              } else {
                let err94 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/team", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data45 };
                vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
              }
            }
            if (data34.labels !== void 0 && (validate22(data34.labels, { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/labels", parentData: data34, parentDataProperty: "labels", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate22.errors : vErrors.concat(validate22.errors), errors = vErrors.length)), data34.formerly !== void 0) {
              let data47 = data34.formerly;
              if (typeof data47 == "string") {
                if (!pattern4.test(data47)) {
                  let err95 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data47 };
                  vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
                }
              } else {
                let err96 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1") + "/formerly", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data47 };
                vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
              }
            }
          } else {
            let err97 = { instancePath: instancePath + "/volume-groups/" + key9.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/volume-groups/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties["volume-groups"].additionalProperties.type, parentSchema: schema31.properties["volume-groups"].additionalProperties, data: data34 };
            vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
          }
        }
      } else {
        let err98 = { instancePath: instancePath + "/volume-groups", schemaPath: "#/properties/volume-groups/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties["volume-groups"].type, parentSchema: schema31.properties["volume-groups"], data: data33 };
        vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
      }
    }
    if (data.retired !== void 0) {
      let data48 = data.retired;
      if (Array.isArray(data48)) {
        let len2 = data48.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data49 = data48[i2];
          if (data49 && typeof data49 == "object" && !Array.isArray(data49)) {
            if (data49.volume === void 0) {
              let err99 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/required", keyword: "required", params: { missingProperty: "volume" }, message: "must have required property 'volume'", schema: schema31.properties.retired.items.required, parentSchema: schema31.properties.retired.items, data: data49 };
              vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
            }
            if (data49.on === void 0) {
              let err100 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/required", keyword: "required", params: { missingProperty: "on" }, message: "must have required property 'on'", schema: schema31.properties.retired.items.required, parentSchema: schema31.properties.retired.items, data: data49 };
              vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
            }
            if (data49.reason === void 0) {
              let err101 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'", schema: schema31.properties.retired.items.required, parentSchema: schema31.properties.retired.items, data: data49 };
              vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
            }
            for (let key14 in data49)
              if (!(key14 === "volume" || key14 === "on" || key14 === "reason" || key14 === "backup" || key14 === "backed-up")) {
                let err102 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema31.properties.retired.items, data: data49 };
                vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
              }
            if (data49.volume !== void 0) {
              let data50 = data49.volume;
              if (typeof data50 == "string") {
                if (!pattern4.test(data50)) {
                  let err103 = { instancePath: instancePath + "/retired/" + i2 + "/volume", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data50 };
                  vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
                }
              } else {
                let err104 = { instancePath: instancePath + "/retired/" + i2 + "/volume", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data50 };
                vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
              }
            }
            if (data49.on !== void 0) {
              let data51 = data49.on;
              if (typeof data51 == "string") {
                if (!pattern18.test(data51)) {
                  let err105 = { instancePath: instancePath + "/retired/" + i2 + "/on", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data51 };
                  vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
                }
              } else {
                let err106 = { instancePath: instancePath + "/retired/" + i2 + "/on", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data51 };
                vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
              }
            }
            if (data49.reason !== void 0) {
              let data52 = data49.reason;
              if (typeof data52 == "string") {
                if (!pattern16.test(data52)) {
                  let err107 = { instancePath: instancePath + "/retired/" + i2 + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data52 };
                  vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
                }
              } else {
                let err108 = { instancePath: instancePath + "/retired/" + i2 + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data52 };
                vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
              }
            }
            if (data49.backup !== void 0) {
              let data53 = data49.backup;
              if (typeof data53 == "string") {
                if (!pattern16.test(data53)) {
                  let err109 = { instancePath: instancePath + "/retired/" + i2 + "/backup", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data53 };
                  vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
                }
              } else {
                let err110 = { instancePath: instancePath + "/retired/" + i2 + "/backup", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data53 };
                vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
              }
            }
            if (data49["backed-up"] !== void 0) {
              let data54 = data49["backed-up"];
              if (typeof data54 == "string") {
                if (!pattern18.test(data54)) {
                  let err111 = { instancePath: instancePath + "/retired/" + i2 + "/backed-up", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data54 };
                  vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
                }
              } else {
                let err112 = { instancePath: instancePath + "/retired/" + i2 + "/backed-up", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data54 };
                vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
              }
            }
          } else {
            let err113 = { instancePath: instancePath + "/retired/" + i2, schemaPath: "#/properties/retired/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.properties.retired.items.type, parentSchema: schema31.properties.retired.items, data: data49 };
            vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
          }
        }
      } else {
        let err114 = { instancePath: instancePath + "/retired", schemaPath: "#/properties/retired/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema31.properties.retired.type, parentSchema: schema31.properties.retired, data: data48 };
        vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
      }
    }
  } else {
    let err115 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema31.type, parentSchema: schema31, data };
    vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
  }
  return validate20.errors = vErrors, errors === 0;
}
validate20.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var price_list = validate29, schema71 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "price-list.json", title: "PriceListFile", description: "A price list: what each tier and each machine costs, from a date on. The newest list that has begun holds, whole.", type: "object", additionalProperties: !1, required: ["from", "currency"], properties: { from: { $ref: "common.json#/$defs/date", description: "The first day on which this list holds." }, currency: { $ref: "common.json#/$defs/currency", description: "The currency of every amount in the list (ISO 4217)." }, tiers: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The tiers, by name.", additionalProperties: { title: "TierDeclaration", type: "object", additionalProperties: !1, required: ["per"], oneOf: [{ required: ["rate"] }, { required: ["bands"] }], description: "One tier: its price and its bounds.", properties: { rate: { $ref: "common.json#/$defs/amount", description: "The price of one unit of capacity for a month." }, bands: { type: "array", minItems: 1, description: "Graduated prices: each band's rate holds for the capacity that falls into it. Only the last may leave out up-to.", items: { title: "BandDeclaration", type: "object", additionalProperties: !1, required: ["rate"], description: "One band of capacity.", properties: { "up-to": { $ref: "common.json#/$defs/size", description: "Where the band ends, counted from zero." }, rate: { $ref: "common.json#/$defs/amount", description: "The price of one unit inside the band for a month." } } } }, per: { type: "string", enum: ["GiB-month", "GB-month"], description: "The unit of capacity that the rate is for." }, flat: { $ref: "common.json#/$defs/amount", description: "A fee a volume and a month, on top." }, "minimum-billed": { $ref: "common.json#/$defs/size", description: "A smaller volume is billed as if it had this size." }, minimum: { $ref: "common.json#/$defs/size", description: "The smallest volume the tier sells." }, maximum: { $ref: "common.json#/$defs/size", description: "The largest volume the tier sells." }, step: { $ref: "common.json#/$defs/size", description: "Sizes are whole multiples of this." }, "io-per-gib": { type: "number", minimum: 0, description: "Operations a second that each GiB brings." }, "io-maximum": { type: "integer", minimum: 0, description: "Operations a second that one volume brings at the most." }, "servers-a-volume": { type: "integer", minimum: 1, description: "How many servers may hold one shareable volume of this tier at once." } } } }, machines: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The machines that servers are billed as, by name.", additionalProperties: { title: "MachineDeclaration", type: "object", additionalProperties: !1, required: ["running"], description: "The price of one machine by the hour.", properties: { running: { $ref: "common.json#/$defs/amount", description: "The price of an hour while the server runs." }, stopped: { $ref: "common.json#/$defs/amount", default: "0", description: "The price of an hour while it is stopped." } } } } } }, schema73 = { title: "Currency", type: "string", pattern: "^[A-Z]{3}$", description: "An ISO 4217 currency code, such as EUR.", examples: ["EUR"] }, schema75 = { title: "Amount", type: "string", pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", description: 'An amount of money as a decimal in quotes, such as "120.00", so that nothing rounds it on the way.', examples: ["120.00", "0.045"] }, pattern39 = new RegExp("^[A-Z]{3}$", "u"), pattern41 = new RegExp("^[0-9]{1,15}(\\.[0-9]{1,15})?$", "u");
function validate29(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate29.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.from === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    if (data.currency === void 0) {
      let err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema71.required, parentSchema: schema71, data };
      vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "from" || key0 === "currency" || key0 === "tiers" || key0 === "machines")) {
        let err2 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema71, data };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    if (data.from !== void 0) {
      let data0 = data.from;
      if (typeof data0 == "string") {
        if (!pattern18.test(data0)) {
          let err3 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data0 };
          vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
        }
      } else {
        let err4 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data0 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
    if (data.currency !== void 0) {
      let data1 = data.currency;
      if (typeof data1 == "string") {
        if (!pattern39.test(data1)) {
          let err5 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/pattern", keyword: "pattern", params: { pattern: "^[A-Z]{3}$" }, message: 'must match pattern "^[A-Z]{3}$"', schema: "^[A-Z]{3}$", parentSchema: schema73, data: data1 };
          vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
        }
      } else {
        let err6 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema73.type, parentSchema: schema73, data: data1 };
        vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
      }
    }
    if (data.tiers !== void 0) {
      let data2 = data.tiers;
      if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
        for (let key1 in data2) {
          let _errs10 = errors;
          if (typeof key1 == "string") {
            if (!pattern4.test(key1)) {
              let err7 = { instancePath: instancePath + "/tiers", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
          } else {
            let err8 = { instancePath: instancePath + "/tiers", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
          var valid3 = _errs10 === errors;
          if (!valid3) {
            let err9 = { instancePath: instancePath + "/tiers", schemaPath: "#/properties/tiers/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema71.properties.tiers.propertyNames, parentSchema: schema71.properties.tiers, data: data2 };
            vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
          }
        }
        for (let key2 in data2) {
          let data3 = data2[key2], _errs16 = errors, valid6 = !1, passing0 = null, _errs17 = errors;
          if (data3 && typeof data3 == "object" && !Array.isArray(data3) && data3.rate === void 0) {
            let err10 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf/0/required", keyword: "required", params: { missingProperty: "rate" }, message: "must have required property 'rate'", schema: schema71.properties.tiers.additionalProperties.oneOf[0].required, parentSchema: schema71.properties.tiers.additionalProperties.oneOf[0], data: data3 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
          var _valid0 = _errs17 === errors;
          _valid0 && (valid6 = !0, passing0 = 0);
          let _errs18 = errors;
          if (data3 && typeof data3 == "object" && !Array.isArray(data3) && data3.bands === void 0) {
            let err11 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf/1/required", keyword: "required", params: { missingProperty: "bands" }, message: "must have required property 'bands'", schema: schema71.properties.tiers.additionalProperties.oneOf[1].required, parentSchema: schema71.properties.tiers.additionalProperties.oneOf[1], data: data3 };
            vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
          }
          var _valid0 = _errs18 === errors;
          if (_valid0 && valid6 ? (valid6 = !1, passing0 = [passing0, 1]) : _valid0 && (valid6 = !0, passing0 = 1), valid6)
            errors = _errs16, vErrors !== null && (_errs16 ? vErrors.length = _errs16 : vErrors = null);
          else {
            let err12 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/oneOf", keyword: "oneOf", params: { passingSchemas: passing0 }, message: "must match exactly one schema in oneOf", schema: schema71.properties.tiers.additionalProperties.oneOf, parentSchema: schema71.properties.tiers.additionalProperties, data: data3 };
            vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
          }
          if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
            if (data3.per === void 0) {
              let err13 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/required", keyword: "required", params: { missingProperty: "per" }, message: "must have required property 'per'", schema: schema71.properties.tiers.additionalProperties.required, parentSchema: schema71.properties.tiers.additionalProperties, data: data3 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
            for (let key3 in data3)
              if (!func1.call(schema71.properties.tiers.additionalProperties.properties, key3)) {
                let err14 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema71.properties.tiers.additionalProperties, data: data3 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            if (data3.rate !== void 0) {
              let data4 = data3.rate;
              if (typeof data4 == "string") {
                if (!pattern41.test(data4)) {
                  let err15 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/rate", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data4 };
                  vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
                }
              } else {
                let err16 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/rate", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data4 };
                vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
              }
            }
            if (data3.bands !== void 0) {
              let data5 = data3.bands;
              if (Array.isArray(data5)) {
                if (data5.length < 1) {
                  let err17 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands", schemaPath: "#/properties/tiers/additionalProperties/properties/bands/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema71.properties.tiers.additionalProperties.properties.bands, data: data5 };
                  vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
                }
                let len0 = data5.length;
                for (let i0 = 0; i0 < len0; i0++) {
                  let data6 = data5[i0];
                  if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
                    if (data6.rate === void 0) {
                      let err18 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/required", keyword: "required", params: { missingProperty: "rate" }, message: "must have required property 'rate'", schema: schema71.properties.tiers.additionalProperties.properties.bands.items.required, parentSchema: schema71.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                      vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
                    }
                    for (let key4 in data6)
                      if (!(key4 === "up-to" || key4 === "rate")) {
                        let err19 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema71.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                        vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
                      }
                    if (data6["up-to"] !== void 0) {
                      let data7 = data6["up-to"];
                      if (typeof data7 == "string") {
                        if (!pattern14.test(data7)) {
                          let err20 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/up-to", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data7 };
                          vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
                        }
                      } else {
                        let err21 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/up-to", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data7 };
                        vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                      }
                    }
                    if (data6.rate !== void 0) {
                      let data8 = data6.rate;
                      if (typeof data8 == "string") {
                        if (!pattern41.test(data8)) {
                          let err22 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/rate", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data8 };
                          vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
                        }
                      } else {
                        let err23 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0 + "/rate", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data8 };
                        vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                      }
                    }
                  } else {
                    let err24 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands/" + i0, schemaPath: "#/properties/tiers/additionalProperties/properties/bands/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.properties.tiers.additionalProperties.properties.bands.items.type, parentSchema: schema71.properties.tiers.additionalProperties.properties.bands.items, data: data6 };
                    vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                  }
                }
              } else {
                let err25 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/bands", schemaPath: "#/properties/tiers/additionalProperties/properties/bands/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema71.properties.tiers.additionalProperties.properties.bands.type, parentSchema: schema71.properties.tiers.additionalProperties.properties.bands, data: data5 };
                vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
              }
            }
            if (data3.per !== void 0) {
              let data9 = data3.per;
              if (typeof data9 != "string") {
                let err26 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/per", schemaPath: "#/properties/tiers/additionalProperties/properties/per/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema71.properties.tiers.additionalProperties.properties.per.type, parentSchema: schema71.properties.tiers.additionalProperties.properties.per, data: data9 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
              if (!(data9 === "GiB-month" || data9 === "GB-month")) {
                let err27 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/per", schemaPath: "#/properties/tiers/additionalProperties/properties/per/enum", keyword: "enum", params: { allowedValues: schema71.properties.tiers.additionalProperties.properties.per.enum }, message: "must be equal to one of the allowed values", schema: schema71.properties.tiers.additionalProperties.properties.per.enum, parentSchema: schema71.properties.tiers.additionalProperties.properties.per, data: data9 };
                vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
              }
            }
            if (data3.flat !== void 0) {
              let data10 = data3.flat;
              if (typeof data10 == "string") {
                if (!pattern41.test(data10)) {
                  let err28 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/flat", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data10 };
                  vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
                }
              } else {
                let err29 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/flat", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data10 };
                vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
              }
            }
            if (data3["minimum-billed"] !== void 0) {
              let data11 = data3["minimum-billed"];
              if (typeof data11 == "string") {
                if (!pattern14.test(data11)) {
                  let err30 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum-billed", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data11 };
                  vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
                }
              } else {
                let err31 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum-billed", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data11 };
                vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
              }
            }
            if (data3.minimum !== void 0) {
              let data12 = data3.minimum;
              if (typeof data12 == "string") {
                if (!pattern14.test(data12)) {
                  let err32 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data12 };
                  vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
                }
              } else {
                let err33 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/minimum", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data12 };
                vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
              }
            }
            if (data3.maximum !== void 0) {
              let data13 = data3.maximum;
              if (typeof data13 == "string") {
                if (!pattern14.test(data13)) {
                  let err34 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/maximum", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data13 };
                  vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
                }
              } else {
                let err35 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/maximum", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data13 };
                vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
              }
            }
            if (data3.step !== void 0) {
              let data14 = data3.step;
              if (typeof data14 == "string") {
                if (!pattern14.test(data14)) {
                  let err36 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/step", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data14 };
                  vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
                }
              } else {
                let err37 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/step", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data14 };
                vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
              }
            }
            if (data3["io-per-gib"] !== void 0) {
              let data15 = data3["io-per-gib"];
              if (typeof data15 == "number" && isFinite(data15)) {
                if (data15 < 0 || isNaN(data15)) {
                  let err38 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io-per-gib", schemaPath: "#/properties/tiers/additionalProperties/properties/io-per-gib/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema71.properties.tiers.additionalProperties.properties["io-per-gib"], data: data15 };
                  vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
                }
              } else {
                let err39 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io-per-gib", schemaPath: "#/properties/tiers/additionalProperties/properties/io-per-gib/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema71.properties.tiers.additionalProperties.properties["io-per-gib"].type, parentSchema: schema71.properties.tiers.additionalProperties.properties["io-per-gib"], data: data15 };
                vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
              }
            }
            if (data3["io-maximum"] !== void 0) {
              let data16 = data3["io-maximum"];
              if (!(typeof data16 == "number" && !(data16 % 1) && !isNaN(data16) && isFinite(data16))) {
                let err40 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io-maximum", schemaPath: "#/properties/tiers/additionalProperties/properties/io-maximum/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema71.properties.tiers.additionalProperties.properties["io-maximum"].type, parentSchema: schema71.properties.tiers.additionalProperties.properties["io-maximum"], data: data16 };
                vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
              }
              if (typeof data16 == "number" && isFinite(data16) && (data16 < 0 || isNaN(data16))) {
                let err41 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/io-maximum", schemaPath: "#/properties/tiers/additionalProperties/properties/io-maximum/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema71.properties.tiers.additionalProperties.properties["io-maximum"], data: data16 };
                vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
              }
            }
            if (data3["servers-a-volume"] !== void 0) {
              let data17 = data3["servers-a-volume"];
              if (!(typeof data17 == "number" && !(data17 % 1) && !isNaN(data17) && isFinite(data17))) {
                let err42 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/servers-a-volume", schemaPath: "#/properties/tiers/additionalProperties/properties/servers-a-volume/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema71.properties.tiers.additionalProperties.properties["servers-a-volume"].type, parentSchema: schema71.properties.tiers.additionalProperties.properties["servers-a-volume"], data: data17 };
                vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
              }
              if (typeof data17 == "number" && isFinite(data17) && (data17 < 1 || isNaN(data17))) {
                let err43 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/servers-a-volume", schemaPath: "#/properties/tiers/additionalProperties/properties/servers-a-volume/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema71.properties.tiers.additionalProperties.properties["servers-a-volume"], data: data17 };
                vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
              }
            }
          } else {
            let err44 = { instancePath: instancePath + "/tiers/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/tiers/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.properties.tiers.additionalProperties.type, parentSchema: schema71.properties.tiers.additionalProperties, data: data3 };
            vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
          }
        }
      } else {
        let err45 = { instancePath: instancePath + "/tiers", schemaPath: "#/properties/tiers/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.properties.tiers.type, parentSchema: schema71.properties.tiers, data: data2 };
        vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
      }
    }
    if (data.machines !== void 0) {
      let data18 = data.machines;
      if (data18 && typeof data18 == "object" && !Array.isArray(data18)) {
        for (let key5 in data18) {
          let _errs59 = errors;
          if (typeof key5 == "string") {
            if (!pattern4.test(key5)) {
              let err46 = { instancePath: instancePath + "/machines", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key5, propertyName: key5 };
              vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
            }
          } else {
            let err47 = { instancePath: instancePath + "/machines", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key5, propertyName: key5 };
            vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
          }
          var valid19 = _errs59 === errors;
          if (!valid19) {
            let err48 = { instancePath: instancePath + "/machines", schemaPath: "#/properties/machines/propertyNames", keyword: "propertyNames", params: { propertyName: key5 }, message: "property name must be valid", schema: schema71.properties.machines.propertyNames, parentSchema: schema71.properties.machines, data: data18 };
            vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
          }
        }
        for (let key6 in data18) {
          let data19 = data18[key6];
          if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
            if (data19.running === void 0) {
              let err49 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machines/additionalProperties/required", keyword: "required", params: { missingProperty: "running" }, message: "must have required property 'running'", schema: schema71.properties.machines.additionalProperties.required, parentSchema: schema71.properties.machines.additionalProperties, data: data19 };
              vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
            }
            for (let key7 in data19)
              if (!(key7 === "running" || key7 === "stopped")) {
                let err50 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machines/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema71.properties.machines.additionalProperties, data: data19 };
                vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
              }
            if (data19.running !== void 0) {
              let data20 = data19.running;
              if (typeof data20 == "string") {
                if (!pattern41.test(data20)) {
                  let err51 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/running", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data20 };
                  vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
                }
              } else {
                let err52 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/running", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data20 };
                vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
              }
            }
            if (data19.stopped !== void 0) {
              let data21 = data19.stopped;
              if (typeof data21 == "string") {
                if (!pattern41.test(data21)) {
                  let err53 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/stopped", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data21 };
                  vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
                }
              } else {
                let err54 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1") + "/stopped", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data21 };
                vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
              }
            }
          } else {
            let err55 = { instancePath: instancePath + "/machines/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machines/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.properties.machines.additionalProperties.type, parentSchema: schema71.properties.machines.additionalProperties, data: data19 };
            vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
          }
        }
      } else {
        let err56 = { instancePath: instancePath + "/machines", schemaPath: "#/properties/machines/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.properties.machines.type, parentSchema: schema71.properties.machines, data: data18 };
        vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
      }
    }
  } else {
    let err57 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema71.type, parentSchema: schema71, data };
    vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
  }
  return validate29.errors = vErrors, errors === 0;
}
validate29.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var rule_pack = validate30, schema86 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "rule-pack.json", title: "RulePackFile", description: "A rule pack: rules, their parameters, their limits and whom they are for.", type: "object", additionalProperties: !1, properties: { use: { type: "array", items: { $ref: "common.json#/$defs/name" }, description: "Packs that ship with Ullage, by name; what follows adds to them or overrides them by name." }, rules: { type: "array", items: { $ref: "#/$defs/entry" }, description: "The rules of this pack." } }, $defs: { names: { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" } }, scope: { title: "ScopeDeclaration", type: "object", additionalProperties: !1, description: "What the rule is for; all of it where left out. Every key given must match.", properties: { teams: { $ref: "#/$defs/names", description: "Only what belongs to one of these teams." }, sites: { $ref: "#/$defs/names", description: "Only what is at one of these sites." }, tiers: { $ref: "#/$defs/names", description: "Only volumes of one of these tiers." }, labels: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, additionalProperties: { type: ["string", "array"], items: { type: "string" }, minItems: 1 }, description: "Only what carries each of these labels, with the value or one of the values." } } }, entry: { title: "RuleEntry", type: "object", required: ["rule"], discriminator: { propertyName: "rule" }, oneOf: [{ title: "MaxMonthlySpendEntry", type: "object", description: "A team, a site, a label or the whole estate that costs more a month than its limit.", additionalProperties: !1, required: ["rule", "limit"], properties: { rule: { const: "max-monthly-spend", description: "A team, a site, a label or the whole estate that costs more a month than its limit." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, limit: { $ref: "common.json#/$defs/amount", description: "The most that all in scope may cost a month together. It holds at equality and is broken above." }, each: { type: "string", enum: ["team", "site"], description: "Makes the limit one for each team, or each site, in scope instead of one for all together." }, "warn-from": { type: "number", exclusiveMinimum: 0, maximum: 1, description: "The share of the limit from which a warning is given." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which the limit holds." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which the limit holds." } } }, { title: "MinimumHeadroomEntry", type: "object", description: "Less free room than asked, at a site's quota, a server's attachment slots or a volume group.", additionalProperties: !1, required: ["rule", "of"], properties: { rule: { const: "minimum-headroom", description: "Less free room than asked, at a site's quota, a server's attachment slots or a volume group." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, of: { type: "string", enum: ["quota", "attachment-slots", "volume-group"], description: "The layer that must keep room." }, share: { type: "number", minimum: 0, maximum: 1, description: "The least share of the capacity that must be free. It holds at equality." }, size: { $ref: "common.json#/$defs/size", description: "The least size that must be free, where sizes are counted." }, count: { type: "integer", minimum: 0, description: "The least number of volumes or slots that must be free, where pieces are counted." } } }, { title: "NoShrinkEntry", type: "object", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-shrink", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "allow-file-systems": { type: "array", items: { type: "string", enum: ["ext2", "ext3", "ext4", "btrfs", "ntfs", "swap"] }, description: "Types of file system that may be made smaller, out of those whose own tools can do it." } } }, { title: "BootVolumeStaysEntry", type: "object", description: "A boot volume detached, swapped, moved or deleted while its server runs.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "boot-volume-stays", description: "A boot volume detached, swapped, moved or deleted while its server runs." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "ExclusiveAttachmentEntry", type: "object", description: "One volume on two servers, unless it is shareable, within its tier's limit, and holds a file system made for several servers at once.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "exclusive-attachment", description: "One volume on two servers, unless it is shareable, within its tier's limit, and holds a file system made for several servers at once." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "GroupTravelsWholeEntry", type: "object", description: "A volume group with members on different servers, or with some members attached and some not.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "group-travels-whole", description: "A volume group with members on different servers, or with some members attached and some not." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "SameSiteEntry", type: "object", description: "A volume attached to a server at another site.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "same-site", description: "A volume attached to a server at another site." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "GrowthStepEntry", type: "object", description: "A volume made more than so many times larger, or larger by more than a size, in one change.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "growth-step", description: "A volume made more than so many times larger, or larger by more than a size, in one change." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, times: { type: "number", minimum: 1, description: "The largest factor by which a volume may grow in one change." }, by: { $ref: "common.json#/$defs/size", description: "The largest size by which a volume may grow in one change." } } }, { title: "DetachedVolumeOwnedEntry", type: "object", description: "A detached volume, still billed, with no owner, no reason or no retention date, or kept past that date.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "detached-volume-owned", description: "A detached volume, still billed, with no owner, no reason or no retention date, or kept past that date." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "at-most": { type: "integer", minimum: 1, description: "The most days ahead that a retention date may lie." }, grace: { type: "integer", minimum: 0, default: 0, description: "Days past the retention date that are let pass." } } }, { title: "DeletionPreparedEntry", type: "object", description: "The deletion of a volume that is attached on main, is protected, or leaves no record of its reason and of a recent enough backup.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "deletion-prepared", description: "The deletion of a volume that is attached on main, is protected, or leaves no record of its reason and of a recent enough backup." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "backup-within": { type: "integer", minimum: 0, description: "The most days that the backup on record may be old on the day of the judgement; left out, no backup is asked for." }, "attached-allowed": { type: "boolean", default: !1, description: "Whether a volume may be deleted that is still attached on main." } } }, { title: "PolicyApartEntry", type: "object", description: "A looser policy and a change of storage in one branch.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "policy-apart", description: "A looser policy and a change of storage in one branch." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }] } } }, schema88 = { title: "RuleEntry", type: "object", required: ["rule"], discriminator: { propertyName: "rule" }, oneOf: [{ title: "MaxMonthlySpendEntry", type: "object", description: "A team, a site, a label or the whole estate that costs more a month than its limit.", additionalProperties: !1, required: ["rule", "limit"], properties: { rule: { const: "max-monthly-spend", description: "A team, a site, a label or the whole estate that costs more a month than its limit." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, limit: { $ref: "common.json#/$defs/amount", description: "The most that all in scope may cost a month together. It holds at equality and is broken above." }, each: { type: "string", enum: ["team", "site"], description: "Makes the limit one for each team, or each site, in scope instead of one for all together." }, "warn-from": { type: "number", exclusiveMinimum: 0, maximum: 1, description: "The share of the limit from which a warning is given." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which the limit holds." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which the limit holds." } } }, { title: "MinimumHeadroomEntry", type: "object", description: "Less free room than asked, at a site's quota, a server's attachment slots or a volume group.", additionalProperties: !1, required: ["rule", "of"], properties: { rule: { const: "minimum-headroom", description: "Less free room than asked, at a site's quota, a server's attachment slots or a volume group." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, of: { type: "string", enum: ["quota", "attachment-slots", "volume-group"], description: "The layer that must keep room." }, share: { type: "number", minimum: 0, maximum: 1, description: "The least share of the capacity that must be free. It holds at equality." }, size: { $ref: "common.json#/$defs/size", description: "The least size that must be free, where sizes are counted." }, count: { type: "integer", minimum: 0, description: "The least number of volumes or slots that must be free, where pieces are counted." } } }, { title: "NoShrinkEntry", type: "object", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "no-shrink", description: "A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "allow-file-systems": { type: "array", items: { type: "string", enum: ["ext2", "ext3", "ext4", "btrfs", "ntfs", "swap"] }, description: "Types of file system that may be made smaller, out of those whose own tools can do it." } } }, { title: "BootVolumeStaysEntry", type: "object", description: "A boot volume detached, swapped, moved or deleted while its server runs.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "boot-volume-stays", description: "A boot volume detached, swapped, moved or deleted while its server runs." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "ExclusiveAttachmentEntry", type: "object", description: "One volume on two servers, unless it is shareable, within its tier's limit, and holds a file system made for several servers at once.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "exclusive-attachment", description: "One volume on two servers, unless it is shareable, within its tier's limit, and holds a file system made for several servers at once." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "GroupTravelsWholeEntry", type: "object", description: "A volume group with members on different servers, or with some members attached and some not.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "group-travels-whole", description: "A volume group with members on different servers, or with some members attached and some not." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "SameSiteEntry", type: "object", description: "A volume attached to a server at another site.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "same-site", description: "A volume attached to a server at another site." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }, { title: "GrowthStepEntry", type: "object", description: "A volume made more than so many times larger, or larger by more than a size, in one change.", additionalProperties: !1, required: ["rule"], minProperties: 2, properties: { rule: { const: "growth-step", description: "A volume made more than so many times larger, or larger by more than a size, in one change." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, times: { type: "number", minimum: 1, description: "The largest factor by which a volume may grow in one change." }, by: { $ref: "common.json#/$defs/size", description: "The largest size by which a volume may grow in one change." } } }, { title: "DetachedVolumeOwnedEntry", type: "object", description: "A detached volume, still billed, with no owner, no reason or no retention date, or kept past that date.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "detached-volume-owned", description: "A detached volume, still billed, with no owner, no reason or no retention date, or kept past that date." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "at-most": { type: "integer", minimum: 1, description: "The most days ahead that a retention date may lie." }, grace: { type: "integer", minimum: 0, default: 0, description: "Days past the retention date that are let pass." } } }, { title: "DeletionPreparedEntry", type: "object", description: "The deletion of a volume that is attached on main, is protected, or leaves no record of its reason and of a recent enough backup.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "deletion-prepared", description: "The deletion of a volume that is attached on main, is protected, or leaves no record of its reason and of a recent enough backup." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." }, "backup-within": { type: "integer", minimum: 0, description: "The most days that the backup on record may be old on the day of the judgement; left out, no backup is asked for." }, "attached-allowed": { type: "boolean", default: !1, description: "Whether a volume may be deleted that is still attached on main." } } }, { title: "PolicyApartEntry", type: "object", description: "A looser policy and a change of storage in one branch.", additionalProperties: !1, required: ["rule"], properties: { rule: { const: "policy-apart", description: "A looser policy and a change of storage in one branch." }, name: { $ref: "common.json#/$defs/name", description: "This entry's own name, by which a waiver or another pack refers to it; the rule's where left out." }, level: { type: "string", enum: ["error", "warning", "note"], description: "How much a finding weighs; error where left out. Only error fails." }, enabled: { type: "boolean", default: !0, description: "false switches off the entry of the same name in a pack that is used." }, where: { $ref: "#/$defs/scope", description: "What the rule is for; all of it where left out." } } }] }, schema90 = { title: "ScopeDeclaration", type: "object", additionalProperties: !1, description: "What the rule is for; all of it where left out. Every key given must match.", properties: { teams: { $ref: "#/$defs/names", description: "Only what belongs to one of these teams." }, sites: { $ref: "#/$defs/names", description: "Only what is at one of these sites." }, tiers: { $ref: "#/$defs/names", description: "Only volumes of one of these tiers." }, labels: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, additionalProperties: { type: ["string", "array"], items: { type: "string" }, minItems: 1 }, description: "Only what carries each of these labels, with the value or one of the values." } } }, schema91 = { type: "array", minItems: 1, items: { $ref: "common.json#/$defs/name" } };
function validate33(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate33.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), Array.isArray(data)) {
    if (data.length < 1) {
      let err0 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema91, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    let len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      let data0 = data[i0];
      if (typeof data0 == "string") {
        if (!pattern4.test(data0)) {
          let err1 = { instancePath: instancePath + "/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data0 };
          vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
        }
      } else {
        let err2 = { instancePath: instancePath + "/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data0 };
        vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
      }
    }
  } else {
    let err3 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema91.type, parentSchema: schema91, data };
    vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
  }
  return validate33.errors = vErrors, errors === 0;
}
validate33.evaluated = { items: !0, dynamicProps: !1, dynamicItems: !1 };
function validate32(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate32.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "teams" || key0 === "sites" || key0 === "tiers" || key0 === "labels")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema90, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.teams !== void 0 && (validate33(data.teams, { instancePath: instancePath + "/teams", parentData: data, parentDataProperty: "teams", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate33.errors : vErrors.concat(validate33.errors), errors = vErrors.length)), data.sites !== void 0 && (validate33(data.sites, { instancePath: instancePath + "/sites", parentData: data, parentDataProperty: "sites", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate33.errors : vErrors.concat(validate33.errors), errors = vErrors.length)), data.tiers !== void 0 && (validate33(data.tiers, { instancePath: instancePath + "/tiers", parentData: data, parentDataProperty: "tiers", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate33.errors : vErrors.concat(validate33.errors), errors = vErrors.length)), data.labels !== void 0) {
      let data3 = data.labels;
      if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
        for (let key1 in data3) {
          let _errs7 = errors;
          if (typeof key1 == "string") {
            if (!pattern4.test(key1)) {
              let err1 = { instancePath: instancePath + "/labels", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key1, propertyName: key1 };
              vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
            }
          } else {
            let err2 = { instancePath: instancePath + "/labels", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key1, propertyName: key1 };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
          var valid1 = _errs7 === errors;
          if (!valid1) {
            let err3 = { instancePath: instancePath + "/labels", schemaPath: "#/properties/labels/propertyNames", keyword: "propertyNames", params: { propertyName: key1 }, message: "property name must be valid", schema: schema90.properties.labels.propertyNames, parentSchema: schema90.properties.labels, data: data3 };
            vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
          }
        }
        for (let key2 in data3) {
          let data4 = data3[key2];
          if (typeof data4 != "string" && !Array.isArray(data4)) {
            let err4 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/labels/additionalProperties/type", keyword: "type", params: { type: schema90.properties.labels.additionalProperties.type }, message: "must be string,array", schema: schema90.properties.labels.additionalProperties.type, parentSchema: schema90.properties.labels.additionalProperties, data: data4 };
            vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
          }
          if (Array.isArray(data4)) {
            if (data4.length < 1) {
              let err5 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/labels/additionalProperties/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items", schema: 1, parentSchema: schema90.properties.labels.additionalProperties, data: data4 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
            let len0 = data4.length;
            for (let i0 = 0; i0 < len0; i0++) {
              let data5 = data4[i0];
              if (typeof data5 != "string") {
                let err6 = { instancePath: instancePath + "/labels/" + key2.replace(/~/g, "~0").replace(/\//g, "~1") + "/" + i0, schemaPath: "#/properties/labels/additionalProperties/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema90.properties.labels.additionalProperties.items.type, parentSchema: schema90.properties.labels.additionalProperties.items, data: data5 };
                vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
              }
            }
          }
        }
      } else {
        let err7 = { instancePath: instancePath + "/labels", schemaPath: "#/properties/labels/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema90.properties.labels.type, parentSchema: schema90.properties.labels, data: data3 };
        vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
      }
    }
  } else {
    let err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema90.type, parentSchema: schema90, data };
    vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
  }
  return validate32.errors = vErrors, errors === 0;
}
validate32.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
function validate31(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate31.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.rule === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.required, parentSchema: schema88, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    let tag0 = data.rule;
    if (typeof tag0 == "string")
      if (tag0 === "max-monthly-spend") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err1 = { instancePath, schemaPath: "#/oneOf/0/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[0].required, parentSchema: schema88.oneOf[0], data };
            vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
          }
          if (data.limit === void 0) {
            let err2 = { instancePath, schemaPath: "#/oneOf/0/required", keyword: "required", params: { missingProperty: "limit" }, message: "must have required property 'limit'", schema: schema88.oneOf[0].required, parentSchema: schema88.oneOf[0], data };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
          for (let key0 in data)
            if (!func1.call(schema88.oneOf[0].properties, key0)) {
              let err3 = { instancePath, schemaPath: "#/oneOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[0], data };
              vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
            }
          if (data.rule !== void 0) {
            let data0 = data.rule;
            if (data0 !== "max-monthly-spend") {
              let err4 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/0/properties/rule/const", keyword: "const", params: { allowedValue: "max-monthly-spend" }, message: "must be equal to constant", schema: "max-monthly-spend", parentSchema: schema88.oneOf[0].properties.rule, data: data0 };
              vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
            }
          }
          if (data.name !== void 0) {
            let data1 = data.name;
            if (typeof data1 == "string") {
              if (!pattern4.test(data1)) {
                let err5 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data1 };
                vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
              }
            } else {
              let err6 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data1 };
              vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
            }
          }
          if (data.level !== void 0) {
            let data2 = data.level;
            if (typeof data2 != "string") {
              let err7 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/0/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[0].properties.level.type, parentSchema: schema88.oneOf[0].properties.level, data: data2 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
            if (!(data2 === "error" || data2 === "warning" || data2 === "note")) {
              let err8 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/0/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[0].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[0].properties.level.enum, parentSchema: schema88.oneOf[0].properties.level, data: data2 };
              vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data3 = data.enabled;
            if (typeof data3 != "boolean") {
              let err9 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/0/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[0].properties.enabled.type, parentSchema: schema88.oneOf[0].properties.enabled, data: data3 };
              vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data.limit !== void 0) {
            let data5 = data.limit;
            if (typeof data5 == "string") {
              if (!pattern41.test(data5)) {
                let err10 = { instancePath: instancePath + "/limit", schemaPath: "common.json#/$defs/amount/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})?$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})?$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})?$", parentSchema: schema75, data: data5 };
                vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
              }
            } else {
              let err11 = { instancePath: instancePath + "/limit", schemaPath: "common.json#/$defs/amount/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema75.type, parentSchema: schema75, data: data5 };
              vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
            }
          }
          if (data.each !== void 0) {
            let data6 = data.each;
            if (typeof data6 != "string") {
              let err12 = { instancePath: instancePath + "/each", schemaPath: "#/oneOf/0/properties/each/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[0].properties.each.type, parentSchema: schema88.oneOf[0].properties.each, data: data6 };
              vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
            }
            if (!(data6 === "team" || data6 === "site")) {
              let err13 = { instancePath: instancePath + "/each", schemaPath: "#/oneOf/0/properties/each/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[0].properties.each.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[0].properties.each.enum, parentSchema: schema88.oneOf[0].properties.each, data: data6 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
          }
          if (data["warn-from"] !== void 0) {
            let data7 = data["warn-from"];
            if (typeof data7 == "number" && isFinite(data7)) {
              if (data7 > 1 || isNaN(data7)) {
                let err14 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1", schema: 1, parentSchema: schema88.oneOf[0].properties["warn-from"], data: data7 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
              if (data7 <= 0 || isNaN(data7)) {
                let err15 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0", schema: 0, parentSchema: schema88.oneOf[0].properties["warn-from"], data: data7 };
                vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
              }
            } else {
              let err16 = { instancePath: instancePath + "/warn-from", schemaPath: "#/oneOf/0/properties/warn-from/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema88.oneOf[0].properties["warn-from"].type, parentSchema: schema88.oneOf[0].properties["warn-from"], data: data7 };
              vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
            }
          }
          if (data.from !== void 0) {
            let data8 = data.from;
            if (typeof data8 == "string") {
              if (!pattern18.test(data8)) {
                let err17 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data8 };
                vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
              }
            } else {
              let err18 = { instancePath: instancePath + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data8 };
              vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
            }
          }
          if (data.until !== void 0) {
            let data9 = data.until;
            if (typeof data9 == "string") {
              if (!pattern18.test(data9)) {
                let err19 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data9 };
                vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
              }
            } else {
              let err20 = { instancePath: instancePath + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data9 };
              vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
            }
          }
        } else {
          let err21 = { instancePath, schemaPath: "#/oneOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[0].type, parentSchema: schema88.oneOf[0], data };
          vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
        }
        var props0 = !0;
      } else if (tag0 === "minimum-headroom") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err22 = { instancePath, schemaPath: "#/oneOf/1/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[1].required, parentSchema: schema88.oneOf[1], data };
            vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
          }
          if (data.of === void 0) {
            let err23 = { instancePath, schemaPath: "#/oneOf/1/required", keyword: "required", params: { missingProperty: "of" }, message: "must have required property 'of'", schema: schema88.oneOf[1].required, parentSchema: schema88.oneOf[1], data };
            vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
          }
          for (let key1 in data)
            if (!func1.call(schema88.oneOf[1].properties, key1)) {
              let err24 = { instancePath, schemaPath: "#/oneOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[1], data };
              vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
            }
          if (data.rule !== void 0) {
            let data10 = data.rule;
            if (data10 !== "minimum-headroom") {
              let err25 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/1/properties/rule/const", keyword: "const", params: { allowedValue: "minimum-headroom" }, message: "must be equal to constant", schema: "minimum-headroom", parentSchema: schema88.oneOf[1].properties.rule, data: data10 };
              vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
            }
          }
          if (data.name !== void 0) {
            let data11 = data.name;
            if (typeof data11 == "string") {
              if (!pattern4.test(data11)) {
                let err26 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data11 };
                vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
              }
            } else {
              let err27 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data11 };
              vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
            }
          }
          if (data.level !== void 0) {
            let data12 = data.level;
            if (typeof data12 != "string") {
              let err28 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/1/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[1].properties.level.type, parentSchema: schema88.oneOf[1].properties.level, data: data12 };
              vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
            }
            if (!(data12 === "error" || data12 === "warning" || data12 === "note")) {
              let err29 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/1/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[1].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[1].properties.level.enum, parentSchema: schema88.oneOf[1].properties.level, data: data12 };
              vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data13 = data.enabled;
            if (typeof data13 != "boolean") {
              let err30 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/1/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[1].properties.enabled.type, parentSchema: schema88.oneOf[1].properties.enabled, data: data13 };
              vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data.of !== void 0) {
            let data15 = data.of;
            if (typeof data15 != "string") {
              let err31 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/1/properties/of/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[1].properties.of.type, parentSchema: schema88.oneOf[1].properties.of, data: data15 };
              vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
            }
            if (!(data15 === "quota" || data15 === "attachment-slots" || data15 === "volume-group")) {
              let err32 = { instancePath: instancePath + "/of", schemaPath: "#/oneOf/1/properties/of/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[1].properties.of.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[1].properties.of.enum, parentSchema: schema88.oneOf[1].properties.of, data: data15 };
              vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
            }
          }
          if (data.share !== void 0) {
            let data16 = data.share;
            if (typeof data16 == "number" && isFinite(data16)) {
              if (data16 > 1 || isNaN(data16)) {
                let err33 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/1/properties/share/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1", schema: 1, parentSchema: schema88.oneOf[1].properties.share, data: data16 };
                vErrors === null ? vErrors = [err33] : vErrors.push(err33), errors++;
              }
              if (data16 < 0 || isNaN(data16)) {
                let err34 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/1/properties/share/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema88.oneOf[1].properties.share, data: data16 };
                vErrors === null ? vErrors = [err34] : vErrors.push(err34), errors++;
              }
            } else {
              let err35 = { instancePath: instancePath + "/share", schemaPath: "#/oneOf/1/properties/share/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema88.oneOf[1].properties.share.type, parentSchema: schema88.oneOf[1].properties.share, data: data16 };
              vErrors === null ? vErrors = [err35] : vErrors.push(err35), errors++;
            }
          }
          if (data.size !== void 0) {
            let data17 = data.size;
            if (typeof data17 == "string") {
              if (!pattern14.test(data17)) {
                let err36 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data17 };
                vErrors === null ? vErrors = [err36] : vErrors.push(err36), errors++;
              }
            } else {
              let err37 = { instancePath: instancePath + "/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data17 };
              vErrors === null ? vErrors = [err37] : vErrors.push(err37), errors++;
            }
          }
          if (data.count !== void 0) {
            let data18 = data.count;
            if (!(typeof data18 == "number" && !(data18 % 1) && !isNaN(data18) && isFinite(data18))) {
              let err38 = { instancePath: instancePath + "/count", schemaPath: "#/oneOf/1/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema88.oneOf[1].properties.count.type, parentSchema: schema88.oneOf[1].properties.count, data: data18 };
              vErrors === null ? vErrors = [err38] : vErrors.push(err38), errors++;
            }
            if (typeof data18 == "number" && isFinite(data18) && (data18 < 0 || isNaN(data18))) {
              let err39 = { instancePath: instancePath + "/count", schemaPath: "#/oneOf/1/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema88.oneOf[1].properties.count, data: data18 };
              vErrors === null ? vErrors = [err39] : vErrors.push(err39), errors++;
            }
          }
        } else {
          let err40 = { instancePath, schemaPath: "#/oneOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[1].type, parentSchema: schema88.oneOf[1], data };
          vErrors === null ? vErrors = [err40] : vErrors.push(err40), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "no-shrink") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err41 = { instancePath, schemaPath: "#/oneOf/2/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[2].required, parentSchema: schema88.oneOf[2], data };
            vErrors === null ? vErrors = [err41] : vErrors.push(err41), errors++;
          }
          for (let key2 in data)
            if (!(key2 === "rule" || key2 === "name" || key2 === "level" || key2 === "enabled" || key2 === "where" || key2 === "allow-file-systems")) {
              let err42 = { instancePath, schemaPath: "#/oneOf/2/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[2], data };
              vErrors === null ? vErrors = [err42] : vErrors.push(err42), errors++;
            }
          if (data.rule !== void 0) {
            let data19 = data.rule;
            if (data19 !== "no-shrink") {
              let err43 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/2/properties/rule/const", keyword: "const", params: { allowedValue: "no-shrink" }, message: "must be equal to constant", schema: "no-shrink", parentSchema: schema88.oneOf[2].properties.rule, data: data19 };
              vErrors === null ? vErrors = [err43] : vErrors.push(err43), errors++;
            }
          }
          if (data.name !== void 0) {
            let data20 = data.name;
            if (typeof data20 == "string") {
              if (!pattern4.test(data20)) {
                let err44 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data20 };
                vErrors === null ? vErrors = [err44] : vErrors.push(err44), errors++;
              }
            } else {
              let err45 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data20 };
              vErrors === null ? vErrors = [err45] : vErrors.push(err45), errors++;
            }
          }
          if (data.level !== void 0) {
            let data21 = data.level;
            if (typeof data21 != "string") {
              let err46 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/2/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[2].properties.level.type, parentSchema: schema88.oneOf[2].properties.level, data: data21 };
              vErrors === null ? vErrors = [err46] : vErrors.push(err46), errors++;
            }
            if (!(data21 === "error" || data21 === "warning" || data21 === "note")) {
              let err47 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/2/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[2].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[2].properties.level.enum, parentSchema: schema88.oneOf[2].properties.level, data: data21 };
              vErrors === null ? vErrors = [err47] : vErrors.push(err47), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data22 = data.enabled;
            if (typeof data22 != "boolean") {
              let err48 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/2/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[2].properties.enabled.type, parentSchema: schema88.oneOf[2].properties.enabled, data: data22 };
              vErrors === null ? vErrors = [err48] : vErrors.push(err48), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data["allow-file-systems"] !== void 0) {
            let data24 = data["allow-file-systems"];
            if (Array.isArray(data24)) {
              let len0 = data24.length;
              for (let i0 = 0; i0 < len0; i0++) {
                let data25 = data24[i0];
                if (typeof data25 != "string") {
                  let err49 = { instancePath: instancePath + "/allow-file-systems/" + i0, schemaPath: "#/oneOf/2/properties/allow-file-systems/items/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[2].properties["allow-file-systems"].items.type, parentSchema: schema88.oneOf[2].properties["allow-file-systems"].items, data: data25 };
                  vErrors === null ? vErrors = [err49] : vErrors.push(err49), errors++;
                }
                if (!(data25 === "ext2" || data25 === "ext3" || data25 === "ext4" || data25 === "btrfs" || data25 === "ntfs" || data25 === "swap")) {
                  let err50 = { instancePath: instancePath + "/allow-file-systems/" + i0, schemaPath: "#/oneOf/2/properties/allow-file-systems/items/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[2].properties["allow-file-systems"].items.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[2].properties["allow-file-systems"].items.enum, parentSchema: schema88.oneOf[2].properties["allow-file-systems"].items, data: data25 };
                  vErrors === null ? vErrors = [err50] : vErrors.push(err50), errors++;
                }
              }
            } else {
              let err51 = { instancePath: instancePath + "/allow-file-systems", schemaPath: "#/oneOf/2/properties/allow-file-systems/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema88.oneOf[2].properties["allow-file-systems"].type, parentSchema: schema88.oneOf[2].properties["allow-file-systems"], data: data24 };
              vErrors === null ? vErrors = [err51] : vErrors.push(err51), errors++;
            }
          }
        } else {
          let err52 = { instancePath, schemaPath: "#/oneOf/2/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[2].type, parentSchema: schema88.oneOf[2], data };
          vErrors === null ? vErrors = [err52] : vErrors.push(err52), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "boot-volume-stays") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err53 = { instancePath, schemaPath: "#/oneOf/3/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[3].required, parentSchema: schema88.oneOf[3], data };
            vErrors === null ? vErrors = [err53] : vErrors.push(err53), errors++;
          }
          for (let key3 in data)
            if (!(key3 === "rule" || key3 === "name" || key3 === "level" || key3 === "enabled" || key3 === "where")) {
              let err54 = { instancePath, schemaPath: "#/oneOf/3/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[3], data };
              vErrors === null ? vErrors = [err54] : vErrors.push(err54), errors++;
            }
          if (data.rule !== void 0) {
            let data26 = data.rule;
            if (data26 !== "boot-volume-stays") {
              let err55 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/3/properties/rule/const", keyword: "const", params: { allowedValue: "boot-volume-stays" }, message: "must be equal to constant", schema: "boot-volume-stays", parentSchema: schema88.oneOf[3].properties.rule, data: data26 };
              vErrors === null ? vErrors = [err55] : vErrors.push(err55), errors++;
            }
          }
          if (data.name !== void 0) {
            let data27 = data.name;
            if (typeof data27 == "string") {
              if (!pattern4.test(data27)) {
                let err56 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data27 };
                vErrors === null ? vErrors = [err56] : vErrors.push(err56), errors++;
              }
            } else {
              let err57 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data27 };
              vErrors === null ? vErrors = [err57] : vErrors.push(err57), errors++;
            }
          }
          if (data.level !== void 0) {
            let data28 = data.level;
            if (typeof data28 != "string") {
              let err58 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/3/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[3].properties.level.type, parentSchema: schema88.oneOf[3].properties.level, data: data28 };
              vErrors === null ? vErrors = [err58] : vErrors.push(err58), errors++;
            }
            if (!(data28 === "error" || data28 === "warning" || data28 === "note")) {
              let err59 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/3/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[3].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[3].properties.level.enum, parentSchema: schema88.oneOf[3].properties.level, data: data28 };
              vErrors === null ? vErrors = [err59] : vErrors.push(err59), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data29 = data.enabled;
            if (typeof data29 != "boolean") {
              let err60 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/3/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[3].properties.enabled.type, parentSchema: schema88.oneOf[3].properties.enabled, data: data29 };
              vErrors === null ? vErrors = [err60] : vErrors.push(err60), errors++;
            }
          }
          data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length));
        } else {
          let err61 = { instancePath, schemaPath: "#/oneOf/3/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[3].type, parentSchema: schema88.oneOf[3], data };
          vErrors === null ? vErrors = [err61] : vErrors.push(err61), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "exclusive-attachment") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err62 = { instancePath, schemaPath: "#/oneOf/4/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[4].required, parentSchema: schema88.oneOf[4], data };
            vErrors === null ? vErrors = [err62] : vErrors.push(err62), errors++;
          }
          for (let key4 in data)
            if (!(key4 === "rule" || key4 === "name" || key4 === "level" || key4 === "enabled" || key4 === "where")) {
              let err63 = { instancePath, schemaPath: "#/oneOf/4/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[4], data };
              vErrors === null ? vErrors = [err63] : vErrors.push(err63), errors++;
            }
          if (data.rule !== void 0) {
            let data31 = data.rule;
            if (data31 !== "exclusive-attachment") {
              let err64 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/4/properties/rule/const", keyword: "const", params: { allowedValue: "exclusive-attachment" }, message: "must be equal to constant", schema: "exclusive-attachment", parentSchema: schema88.oneOf[4].properties.rule, data: data31 };
              vErrors === null ? vErrors = [err64] : vErrors.push(err64), errors++;
            }
          }
          if (data.name !== void 0) {
            let data32 = data.name;
            if (typeof data32 == "string") {
              if (!pattern4.test(data32)) {
                let err65 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data32 };
                vErrors === null ? vErrors = [err65] : vErrors.push(err65), errors++;
              }
            } else {
              let err66 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data32 };
              vErrors === null ? vErrors = [err66] : vErrors.push(err66), errors++;
            }
          }
          if (data.level !== void 0) {
            let data33 = data.level;
            if (typeof data33 != "string") {
              let err67 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/4/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[4].properties.level.type, parentSchema: schema88.oneOf[4].properties.level, data: data33 };
              vErrors === null ? vErrors = [err67] : vErrors.push(err67), errors++;
            }
            if (!(data33 === "error" || data33 === "warning" || data33 === "note")) {
              let err68 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/4/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[4].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[4].properties.level.enum, parentSchema: schema88.oneOf[4].properties.level, data: data33 };
              vErrors === null ? vErrors = [err68] : vErrors.push(err68), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data34 = data.enabled;
            if (typeof data34 != "boolean") {
              let err69 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/4/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[4].properties.enabled.type, parentSchema: schema88.oneOf[4].properties.enabled, data: data34 };
              vErrors === null ? vErrors = [err69] : vErrors.push(err69), errors++;
            }
          }
          data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length));
        } else {
          let err70 = { instancePath, schemaPath: "#/oneOf/4/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[4].type, parentSchema: schema88.oneOf[4], data };
          vErrors === null ? vErrors = [err70] : vErrors.push(err70), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "group-travels-whole") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err71 = { instancePath, schemaPath: "#/oneOf/5/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[5].required, parentSchema: schema88.oneOf[5], data };
            vErrors === null ? vErrors = [err71] : vErrors.push(err71), errors++;
          }
          for (let key5 in data)
            if (!(key5 === "rule" || key5 === "name" || key5 === "level" || key5 === "enabled" || key5 === "where")) {
              let err72 = { instancePath, schemaPath: "#/oneOf/5/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[5], data };
              vErrors === null ? vErrors = [err72] : vErrors.push(err72), errors++;
            }
          if (data.rule !== void 0) {
            let data36 = data.rule;
            if (data36 !== "group-travels-whole") {
              let err73 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/5/properties/rule/const", keyword: "const", params: { allowedValue: "group-travels-whole" }, message: "must be equal to constant", schema: "group-travels-whole", parentSchema: schema88.oneOf[5].properties.rule, data: data36 };
              vErrors === null ? vErrors = [err73] : vErrors.push(err73), errors++;
            }
          }
          if (data.name !== void 0) {
            let data37 = data.name;
            if (typeof data37 == "string") {
              if (!pattern4.test(data37)) {
                let err74 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data37 };
                vErrors === null ? vErrors = [err74] : vErrors.push(err74), errors++;
              }
            } else {
              let err75 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data37 };
              vErrors === null ? vErrors = [err75] : vErrors.push(err75), errors++;
            }
          }
          if (data.level !== void 0) {
            let data38 = data.level;
            if (typeof data38 != "string") {
              let err76 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/5/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[5].properties.level.type, parentSchema: schema88.oneOf[5].properties.level, data: data38 };
              vErrors === null ? vErrors = [err76] : vErrors.push(err76), errors++;
            }
            if (!(data38 === "error" || data38 === "warning" || data38 === "note")) {
              let err77 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/5/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[5].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[5].properties.level.enum, parentSchema: schema88.oneOf[5].properties.level, data: data38 };
              vErrors === null ? vErrors = [err77] : vErrors.push(err77), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data39 = data.enabled;
            if (typeof data39 != "boolean") {
              let err78 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/5/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[5].properties.enabled.type, parentSchema: schema88.oneOf[5].properties.enabled, data: data39 };
              vErrors === null ? vErrors = [err78] : vErrors.push(err78), errors++;
            }
          }
          data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length));
        } else {
          let err79 = { instancePath, schemaPath: "#/oneOf/5/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[5].type, parentSchema: schema88.oneOf[5], data };
          vErrors === null ? vErrors = [err79] : vErrors.push(err79), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "same-site") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err80 = { instancePath, schemaPath: "#/oneOf/6/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[6].required, parentSchema: schema88.oneOf[6], data };
            vErrors === null ? vErrors = [err80] : vErrors.push(err80), errors++;
          }
          for (let key6 in data)
            if (!(key6 === "rule" || key6 === "name" || key6 === "level" || key6 === "enabled" || key6 === "where")) {
              let err81 = { instancePath, schemaPath: "#/oneOf/6/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[6], data };
              vErrors === null ? vErrors = [err81] : vErrors.push(err81), errors++;
            }
          if (data.rule !== void 0) {
            let data41 = data.rule;
            if (data41 !== "same-site") {
              let err82 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/6/properties/rule/const", keyword: "const", params: { allowedValue: "same-site" }, message: "must be equal to constant", schema: "same-site", parentSchema: schema88.oneOf[6].properties.rule, data: data41 };
              vErrors === null ? vErrors = [err82] : vErrors.push(err82), errors++;
            }
          }
          if (data.name !== void 0) {
            let data42 = data.name;
            if (typeof data42 == "string") {
              if (!pattern4.test(data42)) {
                let err83 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data42 };
                vErrors === null ? vErrors = [err83] : vErrors.push(err83), errors++;
              }
            } else {
              let err84 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data42 };
              vErrors === null ? vErrors = [err84] : vErrors.push(err84), errors++;
            }
          }
          if (data.level !== void 0) {
            let data43 = data.level;
            if (typeof data43 != "string") {
              let err85 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/6/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[6].properties.level.type, parentSchema: schema88.oneOf[6].properties.level, data: data43 };
              vErrors === null ? vErrors = [err85] : vErrors.push(err85), errors++;
            }
            if (!(data43 === "error" || data43 === "warning" || data43 === "note")) {
              let err86 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/6/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[6].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[6].properties.level.enum, parentSchema: schema88.oneOf[6].properties.level, data: data43 };
              vErrors === null ? vErrors = [err86] : vErrors.push(err86), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data44 = data.enabled;
            if (typeof data44 != "boolean") {
              let err87 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/6/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[6].properties.enabled.type, parentSchema: schema88.oneOf[6].properties.enabled, data: data44 };
              vErrors === null ? vErrors = [err87] : vErrors.push(err87), errors++;
            }
          }
          data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length));
        } else {
          let err88 = { instancePath, schemaPath: "#/oneOf/6/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[6].type, parentSchema: schema88.oneOf[6], data };
          vErrors === null ? vErrors = [err88] : vErrors.push(err88), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "growth-step") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (Object.keys(data).length < 2) {
            let err89 = { instancePath, schemaPath: "#/oneOf/7/minProperties", keyword: "minProperties", params: { limit: 2 }, message: "must NOT have fewer than 2 properties", schema: 2, parentSchema: schema88.oneOf[7], data };
            vErrors === null ? vErrors = [err89] : vErrors.push(err89), errors++;
          }
          if (data.rule === void 0) {
            let err90 = { instancePath, schemaPath: "#/oneOf/7/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[7].required, parentSchema: schema88.oneOf[7], data };
            vErrors === null ? vErrors = [err90] : vErrors.push(err90), errors++;
          }
          for (let key7 in data)
            if (!(key7 === "rule" || key7 === "name" || key7 === "level" || key7 === "enabled" || key7 === "where" || key7 === "times" || key7 === "by")) {
              let err91 = { instancePath, schemaPath: "#/oneOf/7/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[7], data };
              vErrors === null ? vErrors = [err91] : vErrors.push(err91), errors++;
            }
          if (data.rule !== void 0) {
            let data46 = data.rule;
            if (data46 !== "growth-step") {
              let err92 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/7/properties/rule/const", keyword: "const", params: { allowedValue: "growth-step" }, message: "must be equal to constant", schema: "growth-step", parentSchema: schema88.oneOf[7].properties.rule, data: data46 };
              vErrors === null ? vErrors = [err92] : vErrors.push(err92), errors++;
            }
          }
          if (data.name !== void 0) {
            let data47 = data.name;
            if (typeof data47 == "string") {
              if (!pattern4.test(data47)) {
                let err93 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data47 };
                vErrors === null ? vErrors = [err93] : vErrors.push(err93), errors++;
              }
            } else {
              let err94 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data47 };
              vErrors === null ? vErrors = [err94] : vErrors.push(err94), errors++;
            }
          }
          if (data.level !== void 0) {
            let data48 = data.level;
            if (typeof data48 != "string") {
              let err95 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/7/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[7].properties.level.type, parentSchema: schema88.oneOf[7].properties.level, data: data48 };
              vErrors === null ? vErrors = [err95] : vErrors.push(err95), errors++;
            }
            if (!(data48 === "error" || data48 === "warning" || data48 === "note")) {
              let err96 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/7/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[7].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[7].properties.level.enum, parentSchema: schema88.oneOf[7].properties.level, data: data48 };
              vErrors === null ? vErrors = [err96] : vErrors.push(err96), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data49 = data.enabled;
            if (typeof data49 != "boolean") {
              let err97 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/7/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[7].properties.enabled.type, parentSchema: schema88.oneOf[7].properties.enabled, data: data49 };
              vErrors === null ? vErrors = [err97] : vErrors.push(err97), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data.times !== void 0) {
            let data51 = data.times;
            if (typeof data51 == "number" && isFinite(data51)) {
              if (data51 < 1 || isNaN(data51)) {
                let err98 = { instancePath: instancePath + "/times", schemaPath: "#/oneOf/7/properties/times/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema88.oneOf[7].properties.times, data: data51 };
                vErrors === null ? vErrors = [err98] : vErrors.push(err98), errors++;
              }
            } else {
              let err99 = { instancePath: instancePath + "/times", schemaPath: "#/oneOf/7/properties/times/type", keyword: "type", params: { type: "number" }, message: "must be number", schema: schema88.oneOf[7].properties.times.type, parentSchema: schema88.oneOf[7].properties.times, data: data51 };
              vErrors === null ? vErrors = [err99] : vErrors.push(err99), errors++;
            }
          }
          if (data.by !== void 0) {
            let data52 = data.by;
            if (typeof data52 == "string") {
              if (!pattern14.test(data52)) {
                let err100 = { instancePath: instancePath + "/by", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data52 };
                vErrors === null ? vErrors = [err100] : vErrors.push(err100), errors++;
              }
            } else {
              let err101 = { instancePath: instancePath + "/by", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data52 };
              vErrors === null ? vErrors = [err101] : vErrors.push(err101), errors++;
            }
          }
        } else {
          let err102 = { instancePath, schemaPath: "#/oneOf/7/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[7].type, parentSchema: schema88.oneOf[7], data };
          vErrors === null ? vErrors = [err102] : vErrors.push(err102), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "detached-volume-owned") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err103 = { instancePath, schemaPath: "#/oneOf/8/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[8].required, parentSchema: schema88.oneOf[8], data };
            vErrors === null ? vErrors = [err103] : vErrors.push(err103), errors++;
          }
          for (let key8 in data)
            if (!(key8 === "rule" || key8 === "name" || key8 === "level" || key8 === "enabled" || key8 === "where" || key8 === "at-most" || key8 === "grace")) {
              let err104 = { instancePath, schemaPath: "#/oneOf/8/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[8], data };
              vErrors === null ? vErrors = [err104] : vErrors.push(err104), errors++;
            }
          if (data.rule !== void 0) {
            let data53 = data.rule;
            if (data53 !== "detached-volume-owned") {
              let err105 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/8/properties/rule/const", keyword: "const", params: { allowedValue: "detached-volume-owned" }, message: "must be equal to constant", schema: "detached-volume-owned", parentSchema: schema88.oneOf[8].properties.rule, data: data53 };
              vErrors === null ? vErrors = [err105] : vErrors.push(err105), errors++;
            }
          }
          if (data.name !== void 0) {
            let data54 = data.name;
            if (typeof data54 == "string") {
              if (!pattern4.test(data54)) {
                let err106 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data54 };
                vErrors === null ? vErrors = [err106] : vErrors.push(err106), errors++;
              }
            } else {
              let err107 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data54 };
              vErrors === null ? vErrors = [err107] : vErrors.push(err107), errors++;
            }
          }
          if (data.level !== void 0) {
            let data55 = data.level;
            if (typeof data55 != "string") {
              let err108 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/8/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[8].properties.level.type, parentSchema: schema88.oneOf[8].properties.level, data: data55 };
              vErrors === null ? vErrors = [err108] : vErrors.push(err108), errors++;
            }
            if (!(data55 === "error" || data55 === "warning" || data55 === "note")) {
              let err109 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/8/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[8].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[8].properties.level.enum, parentSchema: schema88.oneOf[8].properties.level, data: data55 };
              vErrors === null ? vErrors = [err109] : vErrors.push(err109), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data56 = data.enabled;
            if (typeof data56 != "boolean") {
              let err110 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/8/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[8].properties.enabled.type, parentSchema: schema88.oneOf[8].properties.enabled, data: data56 };
              vErrors === null ? vErrors = [err110] : vErrors.push(err110), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data["at-most"] !== void 0) {
            let data58 = data["at-most"];
            if (!(typeof data58 == "number" && !(data58 % 1) && !isNaN(data58) && isFinite(data58))) {
              let err111 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/8/properties/at-most/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema88.oneOf[8].properties["at-most"].type, parentSchema: schema88.oneOf[8].properties["at-most"], data: data58 };
              vErrors === null ? vErrors = [err111] : vErrors.push(err111), errors++;
            }
            if (typeof data58 == "number" && isFinite(data58) && (data58 < 1 || isNaN(data58))) {
              let err112 = { instancePath: instancePath + "/at-most", schemaPath: "#/oneOf/8/properties/at-most/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1", schema: 1, parentSchema: schema88.oneOf[8].properties["at-most"], data: data58 };
              vErrors === null ? vErrors = [err112] : vErrors.push(err112), errors++;
            }
          }
          if (data.grace !== void 0) {
            let data59 = data.grace;
            if (!(typeof data59 == "number" && !(data59 % 1) && !isNaN(data59) && isFinite(data59))) {
              let err113 = { instancePath: instancePath + "/grace", schemaPath: "#/oneOf/8/properties/grace/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema88.oneOf[8].properties.grace.type, parentSchema: schema88.oneOf[8].properties.grace, data: data59 };
              vErrors === null ? vErrors = [err113] : vErrors.push(err113), errors++;
            }
            if (typeof data59 == "number" && isFinite(data59) && (data59 < 0 || isNaN(data59))) {
              let err114 = { instancePath: instancePath + "/grace", schemaPath: "#/oneOf/8/properties/grace/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema88.oneOf[8].properties.grace, data: data59 };
              vErrors === null ? vErrors = [err114] : vErrors.push(err114), errors++;
            }
          }
        } else {
          let err115 = { instancePath, schemaPath: "#/oneOf/8/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[8].type, parentSchema: schema88.oneOf[8], data };
          vErrors === null ? vErrors = [err115] : vErrors.push(err115), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "deletion-prepared") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err116 = { instancePath, schemaPath: "#/oneOf/9/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[9].required, parentSchema: schema88.oneOf[9], data };
            vErrors === null ? vErrors = [err116] : vErrors.push(err116), errors++;
          }
          for (let key9 in data)
            if (!(key9 === "rule" || key9 === "name" || key9 === "level" || key9 === "enabled" || key9 === "where" || key9 === "backup-within" || key9 === "attached-allowed")) {
              let err117 = { instancePath, schemaPath: "#/oneOf/9/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[9], data };
              vErrors === null ? vErrors = [err117] : vErrors.push(err117), errors++;
            }
          if (data.rule !== void 0) {
            let data60 = data.rule;
            if (data60 !== "deletion-prepared") {
              let err118 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/9/properties/rule/const", keyword: "const", params: { allowedValue: "deletion-prepared" }, message: "must be equal to constant", schema: "deletion-prepared", parentSchema: schema88.oneOf[9].properties.rule, data: data60 };
              vErrors === null ? vErrors = [err118] : vErrors.push(err118), errors++;
            }
          }
          if (data.name !== void 0) {
            let data61 = data.name;
            if (typeof data61 == "string") {
              if (!pattern4.test(data61)) {
                let err119 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data61 };
                vErrors === null ? vErrors = [err119] : vErrors.push(err119), errors++;
              }
            } else {
              let err120 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data61 };
              vErrors === null ? vErrors = [err120] : vErrors.push(err120), errors++;
            }
          }
          if (data.level !== void 0) {
            let data62 = data.level;
            if (typeof data62 != "string") {
              let err121 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/9/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[9].properties.level.type, parentSchema: schema88.oneOf[9].properties.level, data: data62 };
              vErrors === null ? vErrors = [err121] : vErrors.push(err121), errors++;
            }
            if (!(data62 === "error" || data62 === "warning" || data62 === "note")) {
              let err122 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/9/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[9].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[9].properties.level.enum, parentSchema: schema88.oneOf[9].properties.level, data: data62 };
              vErrors === null ? vErrors = [err122] : vErrors.push(err122), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data63 = data.enabled;
            if (typeof data63 != "boolean") {
              let err123 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/9/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[9].properties.enabled.type, parentSchema: schema88.oneOf[9].properties.enabled, data: data63 };
              vErrors === null ? vErrors = [err123] : vErrors.push(err123), errors++;
            }
          }
          if (data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length)), data["backup-within"] !== void 0) {
            let data65 = data["backup-within"];
            if (!(typeof data65 == "number" && !(data65 % 1) && !isNaN(data65) && isFinite(data65))) {
              let err124 = { instancePath: instancePath + "/backup-within", schemaPath: "#/oneOf/9/properties/backup-within/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema88.oneOf[9].properties["backup-within"].type, parentSchema: schema88.oneOf[9].properties["backup-within"], data: data65 };
              vErrors === null ? vErrors = [err124] : vErrors.push(err124), errors++;
            }
            if (typeof data65 == "number" && isFinite(data65) && (data65 < 0 || isNaN(data65))) {
              let err125 = { instancePath: instancePath + "/backup-within", schemaPath: "#/oneOf/9/properties/backup-within/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema88.oneOf[9].properties["backup-within"], data: data65 };
              vErrors === null ? vErrors = [err125] : vErrors.push(err125), errors++;
            }
          }
          if (data["attached-allowed"] !== void 0) {
            let data66 = data["attached-allowed"];
            if (typeof data66 != "boolean") {
              let err126 = { instancePath: instancePath + "/attached-allowed", schemaPath: "#/oneOf/9/properties/attached-allowed/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[9].properties["attached-allowed"].type, parentSchema: schema88.oneOf[9].properties["attached-allowed"], data: data66 };
              vErrors === null ? vErrors = [err126] : vErrors.push(err126), errors++;
            }
          }
        } else {
          let err127 = { instancePath, schemaPath: "#/oneOf/9/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[9].type, parentSchema: schema88.oneOf[9], data };
          vErrors === null ? vErrors = [err127] : vErrors.push(err127), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else if (tag0 === "policy-apart") {
        if (data && typeof data == "object" && !Array.isArray(data)) {
          if (data.rule === void 0) {
            let err128 = { instancePath, schemaPath: "#/oneOf/10/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema88.oneOf[10].required, parentSchema: schema88.oneOf[10], data };
            vErrors === null ? vErrors = [err128] : vErrors.push(err128), errors++;
          }
          for (let key10 in data)
            if (!(key10 === "rule" || key10 === "name" || key10 === "level" || key10 === "enabled" || key10 === "where")) {
              let err129 = { instancePath, schemaPath: "#/oneOf/10/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema88.oneOf[10], data };
              vErrors === null ? vErrors = [err129] : vErrors.push(err129), errors++;
            }
          if (data.rule !== void 0) {
            let data67 = data.rule;
            if (data67 !== "policy-apart") {
              let err130 = { instancePath: instancePath + "/rule", schemaPath: "#/oneOf/10/properties/rule/const", keyword: "const", params: { allowedValue: "policy-apart" }, message: "must be equal to constant", schema: "policy-apart", parentSchema: schema88.oneOf[10].properties.rule, data: data67 };
              vErrors === null ? vErrors = [err130] : vErrors.push(err130), errors++;
            }
          }
          if (data.name !== void 0) {
            let data68 = data.name;
            if (typeof data68 == "string") {
              if (!pattern4.test(data68)) {
                let err131 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data68 };
                vErrors === null ? vErrors = [err131] : vErrors.push(err131), errors++;
              }
            } else {
              let err132 = { instancePath: instancePath + "/name", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data68 };
              vErrors === null ? vErrors = [err132] : vErrors.push(err132), errors++;
            }
          }
          if (data.level !== void 0) {
            let data69 = data.level;
            if (typeof data69 != "string") {
              let err133 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/10/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema88.oneOf[10].properties.level.type, parentSchema: schema88.oneOf[10].properties.level, data: data69 };
              vErrors === null ? vErrors = [err133] : vErrors.push(err133), errors++;
            }
            if (!(data69 === "error" || data69 === "warning" || data69 === "note")) {
              let err134 = { instancePath: instancePath + "/level", schemaPath: "#/oneOf/10/properties/level/enum", keyword: "enum", params: { allowedValues: schema88.oneOf[10].properties.level.enum }, message: "must be equal to one of the allowed values", schema: schema88.oneOf[10].properties.level.enum, parentSchema: schema88.oneOf[10].properties.level, data: data69 };
              vErrors === null ? vErrors = [err134] : vErrors.push(err134), errors++;
            }
          }
          if (data.enabled !== void 0) {
            let data70 = data.enabled;
            if (typeof data70 != "boolean") {
              let err135 = { instancePath: instancePath + "/enabled", schemaPath: "#/oneOf/10/properties/enabled/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean", schema: schema88.oneOf[10].properties.enabled.type, parentSchema: schema88.oneOf[10].properties.enabled, data: data70 };
              vErrors === null ? vErrors = [err135] : vErrors.push(err135), errors++;
            }
          }
          data.where !== void 0 && (validate32(data.where, { instancePath: instancePath + "/where", parentData: data, parentDataProperty: "where", rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate32.errors : vErrors.concat(validate32.errors), errors = vErrors.length));
        } else {
          let err136 = { instancePath, schemaPath: "#/oneOf/10/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.oneOf[10].type, parentSchema: schema88.oneOf[10], data };
          vErrors === null ? vErrors = [err136] : vErrors.push(err136), errors++;
        }
        props0 !== !0 && (props0 = !0);
      } else {
        let err137 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "mapping", tag: "rule", tagValue: tag0 }, message: 'value of tag "rule" must be in oneOf', schema: schema88.discriminator, parentSchema: schema88, data };
        vErrors === null ? vErrors = [err137] : vErrors.push(err137), errors++;
      }
    else {
      let err138 = { instancePath, schemaPath: "#/discriminator", keyword: "discriminator", params: { error: "tag", tag: "rule", tagValue: tag0 }, message: 'tag "rule" must be string', schema: schema88.discriminator, parentSchema: schema88, data };
      vErrors === null ? vErrors = [err138] : vErrors.push(err138), errors++;
    }
  } else {
    let err139 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema88.type, parentSchema: schema88, data };
    vErrors === null ? vErrors = [err139] : vErrors.push(err139), errors++;
  }
  return validate31.errors = vErrors, evaluated0.props = props0, errors === 0;
}
validate31.evaluated = { dynamicProps: !0, dynamicItems: !1 };
function validate30(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate30.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    for (let key0 in data)
      if (!(key0 === "use" || key0 === "rules")) {
        let err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema86, data };
        vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
      }
    if (data.use !== void 0) {
      let data0 = data.use;
      if (Array.isArray(data0)) {
        let len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data1 = data0[i0];
          if (typeof data1 == "string") {
            if (!pattern4.test(data1)) {
              let err1 = { instancePath: instancePath + "/use/" + i0, schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data1 };
              vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
            }
          } else {
            let err2 = { instancePath: instancePath + "/use/" + i0, schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data1 };
            vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
          }
        }
      } else {
        let err3 = { instancePath: instancePath + "/use", schemaPath: "#/properties/use/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema86.properties.use.type, parentSchema: schema86.properties.use, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.rules !== void 0) {
      let data2 = data.rules;
      if (Array.isArray(data2)) {
        let len1 = data2.length;
        for (let i1 = 0; i1 < len1; i1++)
          validate31(data2[i1], { instancePath: instancePath + "/rules/" + i1, parentData: data2, parentDataProperty: i1, rootData, dynamicAnchors }) || (vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors), errors = vErrors.length);
      } else {
        let err4 = { instancePath: instancePath + "/rules", schemaPath: "#/properties/rules/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema86.properties.rules.type, parentSchema: schema86.properties.rules, data: data2 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
    }
  } else {
    let err5 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema86.type, parentSchema: schema86, data };
    vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
  }
  return validate30.errors = vErrors, errors === 0;
}
validate30.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var settings = validate49, schema109 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "settings.json", title: "SettingsFile", description: "ullage.yaml: where things are, the currency, the month, the sites.", type: "object", additionalProperties: !1, required: ["currency"], properties: { currency: { $ref: "common.json#/$defs/currency", description: "The one currency of the estate (ISO 4217). Price lists in another are refused." }, month: { type: "string", enum: ["730 h", "calendar"], default: "730 h", description: "How long a month is for prices by the hour: 730 h (8,760 h a year over 12, common practice), or the calendar month of the day of judgement." }, paths: { title: "SettingsPaths", type: "object", additionalProperties: !1, description: "Where things are, from the root of the repository; each defaults to the folder of its own name.", properties: { storage: { $ref: "#/$defs/folder", default: "storage", description: "Folder of the estate files, searched to any depth." }, prices: { $ref: "#/$defs/folder", default: "prices", description: "Folder of the price lists." }, policies: { $ref: "#/$defs/folder", default: "policies", description: "Folder of the rule packs." }, waivers: { $ref: "#/$defs/folder", default: "waivers", description: "Folder of the waivers." }, readings: { $ref: "#/$defs/folder", default: "readings", description: "Folder of the readings of measured use." } } }, sites: { type: "object", propertyNames: { $ref: "common.json#/$defs/name" }, description: "The sites, by name. Once any is listed, every site that an estate file names must be.", additionalProperties: { title: "SiteSettings", type: "object", additionalProperties: !1, description: "What one site allows.", properties: { quota: { title: "QuotaSettings", type: "object", additionalProperties: !1, description: "What the provider lets this account hold at the site.", properties: { volumes: { type: "integer", minimum: 0, description: "How many volumes." }, size: { $ref: "common.json#/$defs/size", description: "How much capacity in all." } } }, "attachment-slots": { type: "integer", minimum: 0, description: "How many volumes one server can hold, its boot volume counted." } } } } }, $defs: { folder: { title: "Folder", type: "string", pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", description: "A folder inside the repository, written with / and without a leading / or any .. in it." } } }, schema111 = { title: "Folder", type: "string", pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", description: "A folder inside the repository, written with / and without a leading / or any .. in it." }, pattern72 = new RegExp("^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", "u");
function validate49(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate49.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.currency === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "currency" }, message: "must have required property 'currency'", schema: schema109.required, parentSchema: schema109, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (!(key0 === "currency" || key0 === "month" || key0 === "paths" || key0 === "sites")) {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema109, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.currency !== void 0) {
      let data0 = data.currency;
      if (typeof data0 == "string") {
        if (!pattern39.test(data0)) {
          let err2 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/pattern", keyword: "pattern", params: { pattern: "^[A-Z]{3}$" }, message: 'must match pattern "^[A-Z]{3}$"', schema: "^[A-Z]{3}$", parentSchema: schema73, data: data0 };
          vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
        }
      } else {
        let err3 = { instancePath: instancePath + "/currency", schemaPath: "common.json#/$defs/currency/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema73.type, parentSchema: schema73, data: data0 };
        vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
      }
    }
    if (data.month !== void 0) {
      let data1 = data.month;
      if (typeof data1 != "string") {
        let err4 = { instancePath: instancePath + "/month", schemaPath: "#/properties/month/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema109.properties.month.type, parentSchema: schema109.properties.month, data: data1 };
        vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
      }
      if (!(data1 === "730 h" || data1 === "calendar")) {
        let err5 = { instancePath: instancePath + "/month", schemaPath: "#/properties/month/enum", keyword: "enum", params: { allowedValues: schema109.properties.month.enum }, message: "must be equal to one of the allowed values", schema: schema109.properties.month.enum, parentSchema: schema109.properties.month, data: data1 };
        vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
      }
    }
    if (data.paths !== void 0) {
      let data2 = data.paths;
      if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
        for (let key1 in data2)
          if (!(key1 === "storage" || key1 === "prices" || key1 === "policies" || key1 === "waivers" || key1 === "readings")) {
            let err6 = { instancePath: instancePath + "/paths", schemaPath: "#/properties/paths/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema109.properties.paths, data: data2 };
            vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
          }
        if (data2.storage !== void 0) {
          let data3 = data2.storage;
          if (typeof data3 == "string") {
            if (!pattern72.test(data3)) {
              let err7 = { instancePath: instancePath + "/paths/storage", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema111, data: data3 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
          } else {
            let err8 = { instancePath: instancePath + "/paths/storage", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema111.type, parentSchema: schema111, data: data3 };
            vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
          }
        }
        if (data2.prices !== void 0) {
          let data4 = data2.prices;
          if (typeof data4 == "string") {
            if (!pattern72.test(data4)) {
              let err9 = { instancePath: instancePath + "/paths/prices", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema111, data: data4 };
              vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
            }
          } else {
            let err10 = { instancePath: instancePath + "/paths/prices", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema111.type, parentSchema: schema111, data: data4 };
            vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
          }
        }
        if (data2.policies !== void 0) {
          let data5 = data2.policies;
          if (typeof data5 == "string") {
            if (!pattern72.test(data5)) {
              let err11 = { instancePath: instancePath + "/paths/policies", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema111, data: data5 };
              vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
            }
          } else {
            let err12 = { instancePath: instancePath + "/paths/policies", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema111.type, parentSchema: schema111, data: data5 };
            vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
          }
        }
        if (data2.waivers !== void 0) {
          let data6 = data2.waivers;
          if (typeof data6 == "string") {
            if (!pattern72.test(data6)) {
              let err13 = { instancePath: instancePath + "/paths/waivers", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema111, data: data6 };
              vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
            }
          } else {
            let err14 = { instancePath: instancePath + "/paths/waivers", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema111.type, parentSchema: schema111, data: data6 };
            vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
          }
        }
        if (data2.readings !== void 0) {
          let data7 = data2.readings;
          if (typeof data7 == "string") {
            if (!pattern72.test(data7)) {
              let err15 = { instancePath: instancePath + "/paths/readings", schemaPath: "#/$defs/folder/pattern", keyword: "pattern", params: { pattern: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$" }, message: 'must match pattern "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$"', schema: "^(?!/)(?!.*(^|/)\\.\\.?(/|$))[^\\\\\\u0000-\\u001f]*[^/\\\\\\u0000-\\u001f]$", parentSchema: schema111, data: data7 };
              vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
            }
          } else {
            let err16 = { instancePath: instancePath + "/paths/readings", schemaPath: "#/$defs/folder/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema111.type, parentSchema: schema111, data: data7 };
            vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
          }
        }
      } else {
        let err17 = { instancePath: instancePath + "/paths", schemaPath: "#/properties/paths/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema109.properties.paths.type, parentSchema: schema109.properties.paths, data: data2 };
        vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
      }
    }
    if (data.sites !== void 0) {
      let data8 = data.sites;
      if (data8 && typeof data8 == "object" && !Array.isArray(data8)) {
        for (let key2 in data8) {
          let _errs27 = errors;
          if (typeof key2 == "string") {
            if (!pattern4.test(key2)) {
              let err18 = { instancePath: instancePath + "/sites", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: key2, propertyName: key2 };
              vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
            }
          } else {
            let err19 = { instancePath: instancePath + "/sites", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: key2, propertyName: key2 };
            vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
          }
          var valid8 = _errs27 === errors;
          if (!valid8) {
            let err20 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/propertyNames", keyword: "propertyNames", params: { propertyName: key2 }, message: "property name must be valid", schema: schema109.properties.sites.propertyNames, parentSchema: schema109.properties.sites, data: data8 };
            vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
          }
        }
        for (let key3 in data8) {
          let data9 = data8[key3];
          if (data9 && typeof data9 == "object" && !Array.isArray(data9)) {
            for (let key4 in data9)
              if (!(key4 === "quota" || key4 === "attachment-slots")) {
                let err21 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/sites/additionalProperties/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema109.properties.sites.additionalProperties, data: data9 };
                vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
              }
            if (data9.quota !== void 0) {
              let data10 = data9.quota;
              if (data10 && typeof data10 == "object" && !Array.isArray(data10)) {
                for (let key5 in data10)
                  if (!(key5 === "volumes" || key5 === "size")) {
                    let err22 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota", schemaPath: "#/properties/sites/additionalProperties/properties/quota/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema109.properties.sites.additionalProperties.properties.quota, data: data10 };
                    vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
                  }
                if (data10.volumes !== void 0) {
                  let data11 = data10.volumes;
                  if (!(typeof data11 == "number" && !(data11 % 1) && !isNaN(data11) && isFinite(data11))) {
                    let err23 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/volumes", schemaPath: "#/properties/sites/additionalProperties/properties/quota/properties/volumes/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema109.properties.sites.additionalProperties.properties.quota.properties.volumes.type, parentSchema: schema109.properties.sites.additionalProperties.properties.quota.properties.volumes, data: data11 };
                    vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
                  }
                  if (typeof data11 == "number" && isFinite(data11) && (data11 < 0 || isNaN(data11))) {
                    let err24 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/volumes", schemaPath: "#/properties/sites/additionalProperties/properties/quota/properties/volumes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema109.properties.sites.additionalProperties.properties.quota.properties.volumes, data: data11 };
                    vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
                  }
                }
                if (data10.size !== void 0) {
                  let data12 = data10.size;
                  if (typeof data12 == "string") {
                    if (!pattern14.test(data12)) {
                      let err25 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/size", schemaPath: "common.json#/$defs/size/pattern", keyword: "pattern", params: { pattern: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$" }, message: 'must match pattern "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$"', schema: "^[0-9]{1,15}(\\.[0-9]{1,15})? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$", parentSchema: schema44, data: data12 };
                      vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
                    }
                  } else {
                    let err26 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota/size", schemaPath: "common.json#/$defs/size/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema44.type, parentSchema: schema44, data: data12 };
                    vErrors === null ? vErrors = [err26] : vErrors.push(err26), errors++;
                  }
                }
              } else {
                let err27 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/quota", schemaPath: "#/properties/sites/additionalProperties/properties/quota/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema109.properties.sites.additionalProperties.properties.quota.type, parentSchema: schema109.properties.sites.additionalProperties.properties.quota, data: data10 };
                vErrors === null ? vErrors = [err27] : vErrors.push(err27), errors++;
              }
            }
            if (data9["attachment-slots"] !== void 0) {
              let data13 = data9["attachment-slots"];
              if (!(typeof data13 == "number" && !(data13 % 1) && !isNaN(data13) && isFinite(data13))) {
                let err28 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/sites/additionalProperties/properties/attachment-slots/type", keyword: "type", params: { type: "integer" }, message: "must be integer", schema: schema109.properties.sites.additionalProperties.properties["attachment-slots"].type, parentSchema: schema109.properties.sites.additionalProperties.properties["attachment-slots"], data: data13 };
                vErrors === null ? vErrors = [err28] : vErrors.push(err28), errors++;
              }
              if (typeof data13 == "number" && isFinite(data13) && (data13 < 0 || isNaN(data13))) {
                let err29 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1") + "/attachment-slots", schemaPath: "#/properties/sites/additionalProperties/properties/attachment-slots/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0", schema: 0, parentSchema: schema109.properties.sites.additionalProperties.properties["attachment-slots"], data: data13 };
                vErrors === null ? vErrors = [err29] : vErrors.push(err29), errors++;
              }
            }
          } else {
            let err30 = { instancePath: instancePath + "/sites/" + key3.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/sites/additionalProperties/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema109.properties.sites.additionalProperties.type, parentSchema: schema109.properties.sites.additionalProperties, data: data9 };
            vErrors === null ? vErrors = [err30] : vErrors.push(err30), errors++;
          }
        }
      } else {
        let err31 = { instancePath: instancePath + "/sites", schemaPath: "#/properties/sites/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema109.properties.sites.type, parentSchema: schema109.properties.sites, data: data8 };
        vErrors === null ? vErrors = [err31] : vErrors.push(err31), errors++;
      }
    }
  } else {
    let err32 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema109.type, parentSchema: schema109, data };
    vErrors === null ? vErrors = [err32] : vErrors.push(err32), errors++;
  }
  return validate49.errors = vErrors, errors === 0;
}
validate49.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var waivers = validate50, schema118 = { $schema: "https://json-schema.org/draft/2020-12/schema", $id: "waivers.json", title: "WaiversFile", description: "Waivers: dated, reasoned, signed-for exceptions to one rule for one subject.", type: "object", additionalProperties: !1, required: ["waivers"], properties: { waivers: { type: "array", description: "The waivers.", items: { title: "WaiverDeclaration", type: "object", additionalProperties: !1, required: ["rule", "subject", "reason", "approved-by", "from", "until"], description: "One exception.", properties: { rule: { $ref: "common.json#/$defs/name", description: "The name of the entry in a rule pack, or of the rule." }, subject: { $ref: "common.json#/$defs/sentence", description: "The name of the one subject it is for." }, kind: { type: "string", enum: ["estate", "site", "team", "label", "scope", "server", "volume", "volume-group", "file-system", "branch"], description: "What kind of subject is meant, where two of different kinds share the name." }, reason: { $ref: "common.json#/$defs/sentence", description: "Why the exception is right." }, "approved-by": { $ref: "common.json#/$defs/sentence", description: "Who answers for it." }, from: { $ref: "common.json#/$defs/date", description: "The first day on which it holds." }, until: { $ref: "common.json#/$defs/date", description: "The last day on which it holds." } } } } } };
function validate50(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
  let vErrors = null, errors = 0, evaluated0 = validate50.evaluated;
  if (evaluated0.dynamicProps && (evaluated0.props = void 0), evaluated0.dynamicItems && (evaluated0.items = void 0), data && typeof data == "object" && !Array.isArray(data)) {
    if (data.waivers === void 0) {
      let err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "waivers" }, message: "must have required property 'waivers'", schema: schema118.required, parentSchema: schema118, data };
      vErrors === null ? vErrors = [err0] : vErrors.push(err0), errors++;
    }
    for (let key0 in data)
      if (key0 !== "waivers") {
        let err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema118, data };
        vErrors === null ? vErrors = [err1] : vErrors.push(err1), errors++;
      }
    if (data.waivers !== void 0) {
      let data0 = data.waivers;
      if (Array.isArray(data0)) {
        let len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data1 = data0[i0];
          if (data1 && typeof data1 == "object" && !Array.isArray(data1)) {
            if (data1.rule === void 0) {
              let err2 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "rule" }, message: "must have required property 'rule'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err2] : vErrors.push(err2), errors++;
            }
            if (data1.subject === void 0) {
              let err3 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "subject" }, message: "must have required property 'subject'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err3] : vErrors.push(err3), errors++;
            }
            if (data1.reason === void 0) {
              let err4 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "reason" }, message: "must have required property 'reason'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err4] : vErrors.push(err4), errors++;
            }
            if (data1["approved-by"] === void 0) {
              let err5 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "approved-by" }, message: "must have required property 'approved-by'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err5] : vErrors.push(err5), errors++;
            }
            if (data1.from === void 0) {
              let err6 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "from" }, message: "must have required property 'from'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err6] : vErrors.push(err6), errors++;
            }
            if (data1.until === void 0) {
              let err7 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/required", keyword: "required", params: { missingProperty: "until" }, message: "must have required property 'until'", schema: schema118.properties.waivers.items.required, parentSchema: schema118.properties.waivers.items, data: data1 };
              vErrors === null ? vErrors = [err7] : vErrors.push(err7), errors++;
            }
            for (let key1 in data1)
              if (!(key1 === "rule" || key1 === "subject" || key1 === "kind" || key1 === "reason" || key1 === "approved-by" || key1 === "from" || key1 === "until")) {
                let err8 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties", schema: !1, parentSchema: schema118.properties.waivers.items, data: data1 };
                vErrors === null ? vErrors = [err8] : vErrors.push(err8), errors++;
              }
            if (data1.rule !== void 0) {
              let data2 = data1.rule;
              if (typeof data2 == "string") {
                if (!pattern4.test(data2)) {
                  let err9 = { instancePath: instancePath + "/waivers/" + i0 + "/rule", schemaPath: "common.json#/$defs/name/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$" }, message: 'must match pattern "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$"', schema: "^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$", parentSchema: schema33, data: data2 };
                  vErrors === null ? vErrors = [err9] : vErrors.push(err9), errors++;
                }
              } else {
                let err10 = { instancePath: instancePath + "/waivers/" + i0 + "/rule", schemaPath: "common.json#/$defs/name/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema33.type, parentSchema: schema33, data: data2 };
                vErrors === null ? vErrors = [err10] : vErrors.push(err10), errors++;
              }
            }
            if (data1.subject !== void 0) {
              let data3 = data1.subject;
              if (typeof data3 == "string") {
                if (!pattern16.test(data3)) {
                  let err11 = { instancePath: instancePath + "/waivers/" + i0 + "/subject", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data3 };
                  vErrors === null ? vErrors = [err11] : vErrors.push(err11), errors++;
                }
              } else {
                let err12 = { instancePath: instancePath + "/waivers/" + i0 + "/subject", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data3 };
                vErrors === null ? vErrors = [err12] : vErrors.push(err12), errors++;
              }
            }
            if (data1.kind !== void 0) {
              let data4 = data1.kind;
              if (typeof data4 != "string") {
                let err13 = { instancePath: instancePath + "/waivers/" + i0 + "/kind", schemaPath: "#/properties/waivers/items/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema118.properties.waivers.items.properties.kind.type, parentSchema: schema118.properties.waivers.items.properties.kind, data: data4 };
                vErrors === null ? vErrors = [err13] : vErrors.push(err13), errors++;
              }
              if (!(data4 === "estate" || data4 === "site" || data4 === "team" || data4 === "label" || data4 === "scope" || data4 === "server" || data4 === "volume" || data4 === "volume-group" || data4 === "file-system" || data4 === "branch")) {
                let err14 = { instancePath: instancePath + "/waivers/" + i0 + "/kind", schemaPath: "#/properties/waivers/items/properties/kind/enum", keyword: "enum", params: { allowedValues: schema118.properties.waivers.items.properties.kind.enum }, message: "must be equal to one of the allowed values", schema: schema118.properties.waivers.items.properties.kind.enum, parentSchema: schema118.properties.waivers.items.properties.kind, data: data4 };
                vErrors === null ? vErrors = [err14] : vErrors.push(err14), errors++;
              }
            }
            if (data1.reason !== void 0) {
              let data5 = data1.reason;
              if (typeof data5 == "string") {
                if (!pattern16.test(data5)) {
                  let err15 = { instancePath: instancePath + "/waivers/" + i0 + "/reason", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data5 };
                  vErrors === null ? vErrors = [err15] : vErrors.push(err15), errors++;
                }
              } else {
                let err16 = { instancePath: instancePath + "/waivers/" + i0 + "/reason", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data5 };
                vErrors === null ? vErrors = [err16] : vErrors.push(err16), errors++;
              }
            }
            if (data1["approved-by"] !== void 0) {
              let data6 = data1["approved-by"];
              if (typeof data6 == "string") {
                if (!pattern16.test(data6)) {
                  let err17 = { instancePath: instancePath + "/waivers/" + i0 + "/approved-by", schemaPath: "common.json#/$defs/sentence/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"', schema: "\\S", parentSchema: schema46, data: data6 };
                  vErrors === null ? vErrors = [err17] : vErrors.push(err17), errors++;
                }
              } else {
                let err18 = { instancePath: instancePath + "/waivers/" + i0 + "/approved-by", schemaPath: "common.json#/$defs/sentence/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema46.type, parentSchema: schema46, data: data6 };
                vErrors === null ? vErrors = [err18] : vErrors.push(err18), errors++;
              }
            }
            if (data1.from !== void 0) {
              let data7 = data1.from;
              if (typeof data7 == "string") {
                if (!pattern18.test(data7)) {
                  let err19 = { instancePath: instancePath + "/waivers/" + i0 + "/from", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data7 };
                  vErrors === null ? vErrors = [err19] : vErrors.push(err19), errors++;
                }
              } else {
                let err20 = { instancePath: instancePath + "/waivers/" + i0 + "/from", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data7 };
                vErrors === null ? vErrors = [err20] : vErrors.push(err20), errors++;
              }
            }
            if (data1.until !== void 0) {
              let data8 = data1.until;
              if (typeof data8 == "string") {
                if (!pattern18.test(data8)) {
                  let err21 = { instancePath: instancePath + "/waivers/" + i0 + "/until", schemaPath: "common.json#/$defs/date/pattern", keyword: "pattern", params: { pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }, message: 'must match pattern "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"', schema: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", parentSchema: schema48, data: data8 };
                  vErrors === null ? vErrors = [err21] : vErrors.push(err21), errors++;
                }
              } else {
                let err22 = { instancePath: instancePath + "/waivers/" + i0 + "/until", schemaPath: "common.json#/$defs/date/type", keyword: "type", params: { type: "string" }, message: "must be string", schema: schema48.type, parentSchema: schema48, data: data8 };
                vErrors === null ? vErrors = [err22] : vErrors.push(err22), errors++;
              }
            }
          } else {
            let err23 = { instancePath: instancePath + "/waivers/" + i0, schemaPath: "#/properties/waivers/items/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema118.properties.waivers.items.type, parentSchema: schema118.properties.waivers.items, data: data1 };
            vErrors === null ? vErrors = [err23] : vErrors.push(err23), errors++;
          }
        }
      } else {
        let err24 = { instancePath: instancePath + "/waivers", schemaPath: "#/properties/waivers/type", keyword: "type", params: { type: "array" }, message: "must be array", schema: schema118.properties.waivers.type, parentSchema: schema118.properties.waivers, data: data0 };
        vErrors === null ? vErrors = [err24] : vErrors.push(err24), errors++;
      }
    }
  } else {
    let err25 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object", schema: schema118.type, parentSchema: schema118, data };
    vErrors === null ? vErrors = [err25] : vErrors.push(err25), errors++;
  }
  return validate50.errors = vErrors, errors === 0;
}
validate50.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var validators = { estate, "price-list": price_list, "rule-pack": rule_pack, settings, waivers };
export {
  estate,
  price_list,
  rule_pack,
  settings,
  validators,
  waivers
};
