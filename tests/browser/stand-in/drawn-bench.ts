/**
 * The drawn bench: a section head is `# title; open; what is tucked; headline word; its figures`,
 * a line `name; label; aside; unit; i (inset) t (tucked); boxes`, a box `form|state|sign|words|figure`,
 * the second and third left out where they are the first again.
 */
export const drawnBench = `
# Place; open; 6 more; ; 
altitude; Altitude; ; m; t; well||||650
room_summer; Room, hottest day; ; °C; t; well||||23
room_winter; Room, winter; ; °C; t; well||||21
humidity_summer; Room humidity, summer; ; %; t; well||||60
humidity_winter; Room humidity, winter; ; %; t; well||||45
shelf_rating; Shelf rating; ; kg; ; well||||100; well||||100; well|needs|need|needs a figure|
shelf_share; Share of it we use; ; %; t; well||||80
# Tank; ; 10 more; floor, m²; 0.1980; 0.4005; 0.7200
tank_shape; Shape; ; ; ; flat||||rectangle
inside_length; Inside length; ; mm; ; flat||||445; flat||||900; flat||||1200
inside_depth; Inside depth; ; mm; ; flat||||445; flat||||445; flat||||600
inside_height; Inside height; ; mm; ; flat||||445; flat||||600; flat||||600
front_bow; Front bow; ; mm; t; flat||||0
side_return; Side return; ; mm; t; flat||||0
dam_height; Dam; ; mm; ; flat||||110; flat||||150; flat||||165
glass; Glass; ; mm; ; flat||||5; flat||||6; flat||||8
floor_area; Floor; ; m²; ; flat||||0.1980; flat||||0.4005; flat||||0.7200
perimeter; Perimeter; ; m; ; flat||||1.780; flat||||2.690; flat||||3.600
wall_area; Walls; ; m²; t; flat||||0.7921; flat||||1.6140; flat||||2.1600
glass_area; Glass in all; ; m²; t; flat||||0.9901; flat||||2.0145; flat||||2.8800
overall_length; Widest, inside; ; mm; t; flat||||445; flat||||900; flat||||1200
overall_depth; Deepest, inside; ; mm; t; flat||||445; flat||||445; flat||||600
outside_length; Outside length; ; mm; t; flat||||455; flat||||912; flat||||1216
outside_depth; Outside depth; ; mm; t; flat||||455; flat||||457; flat||||616
footprint; Footprint; ; m²; t; flat||||0.2070; flat||||0.4168; flat||||0.7491
tank_need; Tank; ; each; t; flat||||1
# Drainage; open; 10 more; clay, L; 6.24; 16.84; 34.05
drainage; Drainage depth; ; mm; ; flat||||30; flat||||40; flat||||45
drainage_settle; Settling; ; %; t; well||||2
drainage_waste; Waste; ; %; t; well||||3
drainage_placed; Drainage, placed; ; L; t; flat||||5.94; flat||||16.02; flat||||32.40
drainage_need; Expanded clay, loose; ; L; ; flat||||6.24; flat||||16.84; flat||||34.05
drainage_void; Room between pellets; ; %; t; well||||40
drain_gap; Drain gap; ; mm; ; well||||10; well||||10; well|local||local rule|15
drain_room; Room for water; ; L; ; flat||||1.58; flat||||4.81; flat||||8.64
mesh_thickness; Mesh thickness; ; mm; t; well||||0
mesh_upturn; Mesh upturn; ; mm; t; well||||30
mesh_roll_width; Mesh roll width; ; mm; t; well||||1200
mesh_length; Mesh length; ; mm; t; flat||||505; flat||||960; flat||||1260
mesh_depth; Mesh depth; ; mm; t; flat||||505; flat||||505; flat||||660
mesh_need; Mesh from the roll; ; m; t; flat||||0.505; flat||||0.505; flat||||1.260
# Capping; ; 4 more; calcined clay, L; 2.48; 4.82; 8.41
capping; Capping depth; ; mm; ; flat||||10
bead_width; Bead width; ; mm; t; well||||20
bead_height; Bead height; ; mm; t; well||||20
edge_bead; Edge bead; ; L; ; flat||||0.36; flat||||0.54; flat||||0.72
capping_settle; Settling; ; %; t; well||||3
capping_waste; Waste; ; %; t; well||||3
capping_placed; Capping, placed; ; L; ; flat||||2.34; flat||||4.54; flat||||7.92
capping_need; Calcined clay, loose; ; L; ; flat||||2.48; flat||||4.82; flat||||8.41
# Soil; open; 17 more; placed, L; 10.93; 33.70; 67.68
freeboard; Freeboard; ; mm; t; flat||||10
soil_front; Soil at the front; ; mm; ; flat||||60; flat||||90; flat||||100
soil_rise; Rise to the back; ; mm; ; well|job||whole job|0
soil_gross; Soil before taking off; ; L; t; flat||||11.88; flat||||36.05; flat||||72.00
buried_share; Buried hardscape; ; %; t; well||||5
soil_buried; Buried hardscape; ; L; t; flat||||0.59; flat||||1.80; flat||||3.60
soil_placed; Soil, placed; ; L; ; flat||||10.93; flat||||33.70; flat||||67.68
mix_settle; Settling of the mix; ; %; t; well||||12
mix_waste; Waste; ; %; t; well||||5
blend_shrink; Blending shrinkage; ; %; t; well||||12
mix_loose; Mix, loose; ; L; ; flat||||13.04; flat||||40.22; flat||||80.75
mix_inputs; Parts before blending; ; L; t; flat||||14.82; flat||||45.70; flat||||91.77
coir_parts; Coir parts; ; ; t; well||||3
bark_parts; Bark parts; ; ; t; well||||3
fern_parts; Fern parts; ; ; t; well||||2
charcoal_parts; Charcoal parts; ; ; t; well||||1
moss_parts; Moss parts; ; ; t; well||||1
mix_parts; Parts in all; ; ; t; flat||||10
coir_need; Coir; 3 parts; L; i; flat||||4.45; flat||||13.71; flat||||27.53
bark_need; Fine bark; 3 parts; L; i; flat|old|old|old price|4.45; flat|old|old|old price|13.71; flat|old|old|old price|27.53
fern_need; Fern fibre; 2 parts; L; i; flat||||2.96; flat||||9.14; flat||||18.35
charcoal_need; Charcoal; 1 part; L; i; flat||||1.48; flat||||4.57; flat||||9.18
moss_need; Long-fibre moss; 1 part; L; i; flat||||1.48; flat||||4.57; flat||||9.18
moisture_start; Moisture at start; ; %; ; well|range|range|out of range|45; well||||12; well||||12
moisture_target; Moisture wanted; ; %; t; well||||40
wetting; Wetting water; ; L; ; flat|waiting|wait|waits on moisture at start|; flat||||9.44; flat||||18.95
inoculant_rate; Inoculant rate; ; g/L; t; well||||1
inoculant_need; Inoculant; ; g; t; flat||||13.04; flat||||40.22; flat||||80.75
# Litter; open; 7 more; oak leaves, g; 79.72; 161.24; 289.87
litter; Litter depth; ; mm; ; well||||30
litter_density; Density as laid; ; g/L; t; well||||12.2
litter_waste; Waste; ; %; t; well||||10
litter_dry; Litter, dry; ; g; t; flat||||72.48; flat||||146.58; flat||||263.52
leaves_need; Oak leaves, dry; ; g; ; flat||||79.72; flat||||161.24; flat||||289.87
leaves_loose; Leaves to treat, loose; ; L; t; flat||||6.53; flat||||13.22; flat||||23.76
leaf_sheet; One leaf layer; ; g/m²; t; well||||80
leaf_layers; Leaf layers; ; ; t; flat||||4.58
leaves_cover; Cover by chance; ; %; t; flat||||99.0
litter_over_dam; Over the dam; ; mm; ; flat||||20
# Hardscape and panel; ; 9 more; pieces; 3; 5; 7
panel_walls; Walls with a panel; ; each; t; flat||||1
panel_width; Panel width; ; mm; t; flat||||445; flat||||900; flat||||1200
panel_area; Panel; ; m²; t; flat||||0.1980; flat||||0.5400; flat||||0.7200
panel_waste; Waste; ; %; t; well||||10
panel_size; One cork panel; ; m²; t; well||||0.18
panels_need; Cork panels; ; each; ; flat||||2; flat||||4; flat||||5
hardscape_rate; Hardscape rate; ; each/m²; t; flat||||15
branches_need; Branches; ; each; ; flat||||1; flat||||3; flat||||5
tubes_need; Cork tubes; ; each; ; well||||1
pods_need; Seed pods; ; each; ; well||||5
pieces; Pieces; ; each; ; flat||||3; flat||||5; flat||||7
sealant_bead; Sealant bead; ; mm; t; well||||6
sealant_run; Sealant run; ; m; t; flat||||4.01; flat||||9.30; flat||||12.00
sealant_waste; Waste; ; %; t; well||||15
sealant_need; Sealant tubes; ; each; ; flat||||1; flat||||1; flat||||2
# Plants; ; ; plants; 12; 23; 36
ground_need; Ground; ; each; ; flat||||3; flat||||6; flat||||11
mid_need; Mid; ; each; ; flat||||3; flat||||6; flat||||11
feature_need; Feature; ; each; ; flat||||1; flat||||2; flat||||3
climber_need; Climber; ; each; ; flat||||3; flat||||5; flat||||6
epiphyte_need; Epiphyte; ; each; ; flat||||2; flat||||4; flat||||5
plants; Plants in all; ; each; ; flat||||12; flat||||23; flat||||36
# Microfauna; ; 4 more; springtails; 527; 1,065; 1,914
settle_in; Settle-in; ; d; ; well||||21
springtail_target; Springtails at first animals; ; each/m²; t; well||||8,000
springtail_capacity; Room for springtails; ; each/m²; t; well||||20,000
springtail_rate; Daily growth; ; %/d; t; well||||7
springtail_seed; Springtails to seed; ; each; ; flat||||527; flat||||1,065; flat||||1,914
springtails_need; Springtail portions; ; each; ; well||||1
isopod_founders; Isopod founders; ; each; ; well||||10
isopods_need; Isopod portions; ; each; t; flat||||1
# Cover and air; ; 9 more; vent share, %; 5.6; 5.6; 4.2
cover_vent; Vent strip; ; mm; ; well||||25
cover_clear; Clearance; ; mm; t; well||||1.5
cover_gap; Gap between panes; ; mm; t; well||||2
cover_max; Longest pane; ; mm; t; well||||600
cover_glass; Cover glass; ; mm; t; well||||4
panes; Panes; ; each; ; flat||||1; flat||||2; flat||||2
pane_length; Pane length; ; mm; ; flat||||442; flat||||447; flat||||597
pane_depth; Pane depth; ; mm; ; flat||||418; flat||||418; flat||||573
cutting_need; Panes to cut; ; each; t; flat||||1; flat||||2; flat||||2
cover_need; Cover glass; ; m²; ; flat||||0.1848; flat||||0.3737; flat||||0.6842
vent_share; Vent share; ; %; ; flat||||5.6; flat||||5.6; flat||||4.2
air_changes; Air changes; ; each/h; t; well||||1
tank_air; Air in the tank; ; °C; t; well||||24
tank_humidity; Humidity in the tank; ; %; t; well||||90
air_volume; Air; ; m³; t; flat||||0.0663; flat||||0.1802; flat||||0.3132
vapour_winter; Vapour lost, winter; ; mL/d; ; flat||||18.06; flat||||49.06; flat||||85.25
vapour_summer; Vapour lost, summer; ; mL/d; ; flat||||11.54; flat||||31.36; flat||||54.51
# Light; open; 17 more; lamps; 2; 3; 3
screen_under_lamps; Screen under lamps; ; ; ; well||||no; well|local||local|yes; well||||no
lamp_length; Lamp length; ; mm; t; flat||||450; flat||||900; flat||||900
lamp_power; Lamp power; ; W; t; flat||||18; flat||||36; flat||||36
lamp_mass; Lamp mass; ; kg; t; flat||||0.7; flat||||1.2; flat||||1.2
lamp_efficacy; Light per joule; ; µmol/J; t; well||||1.9
light_use; Light reaching plants; ; %; t; well||||45
light_through; Light through the top; ; %; t; flat||||90.0; flat||||67.5; flat||||90.0
light_hours; Hours of light; ; h/d; t; well||||12
light_target; Light wanted; ; mol/m²/d; t; flat||||5
light_per_lamp; Light from one lamp; ; mol/m²/d; ; flat||||3.022; flat||||2.241; flat||||1.662
lamps; Lamps; ; each; ; flat||||2; flat||||3; flat||||3
lamp_300_need; Lamp bar 300 mm; ; each; t; flat||||0
lamp_450_need; Lamp bar 450 mm; ; each; t; flat||||2; flat||||0; flat||||0
lamp_600_need; Lamp bar 600 mm; ; each; t; flat||||0
lamp_900_need; Lamp bar 900 mm; ; each; t; flat||||0; flat||||3; flat||||3
timer_need; Timer; ; each; t; well||||1
lamp_heat_share; Lamp heat into the tank; ; %; t; well||||35
heat_passage; Heat through the glass; ; W/m²/K; t; well||||5
light_warming_up; Warming by lamps; ; °C; t; flat||||2.55; flat||||3.75; flat||||2.63
hottest_day; Hottest day in the tank; ; °C; ; flat||||25.55; flat||||26.75; flat||||25.63
species_ceiling; Animals’ ceiling; ; °C; t; well||||27
# Mist and water; ; 8 more; fills in, d; 28.3; 46.4; 58.4
nozzles; Nozzles; ; each; ; flat||||1; flat||||2; flat||||3
nozzle_flow; Flow of one nozzle; ; mL/min; t; well||||90
rated_pressure; Rated pressure; ; kPa; t; well||||550
pump_pressure; Pump pressure; ; kPa; t; well||||550
mist_time; Mist time; ; s; ; well||||15
mist_cycles; Mist cycles; ; each/d; ; well||||3
mist; Mist; ; mL/d; ; flat||||67.5; flat||||135.0; flat||||202.5
mist_set_need; Mist set; ; each; t; flat||||1
nozzle_need; Extra nozzles; ; each; t; flat||||0; flat||||1; flat||||2
drain_tap_need; Drain tap; ; each; t; flat||||0
fan_need; Fan; ; each; t; flat||||0
drain_days; Drainage fills in; ; d; ; flat||||28.3; flat||||46.4; flat||||58.4
reservoir; Reservoir; ; L; t; well||||9
refill_days; Refill and clean every; ; d; ; flat||||14
# Weight; open; 13 more; filled, kg; 33.81; 83.16; 151.98
tank_mass; Tank glass; ; kg; ; flat||||12.38; flat||||30.22; flat||||57.60
top_mass; Top frame; ; kg; t; well||||2
mix_dry; Mix as placed, dry; ; kg/L; t; flat||||0.1734
drainage_mass; Drainage; ; kg; t; flat||||2.97; flat||||8.01; flat||||16.20
capping_mass; Capping; ; kg; t; flat||||2.22; flat||||4.32; flat||||7.52
soil_mass; Soil, damp; ; kg; ; flat||||6.27; flat||||19.32; flat||||38.81
litter_wet; Litter, wet; ; kg; t; flat||||0.21; flat||||0.42; flat||||0.76
water_mass; Standing water at its worst; ; kg; t; flat||||1.58; flat||||4.81; flat||||8.64
hardscape_mass; Hardscape; ; kg; t; flat||||1.45; flat||||3.25; flat||||5.05
panel_mass; Panel; ; kg; t; flat||||0.77; flat||||2.10; flat||||2.80
plant_mass; Plants; ; kg; t; flat||||0.72; flat||||1.38; flat||||2.16
cover_mass; Cover glass; ; kg; t; flat||||1.85; flat||||3.74; flat||||6.84
lamps_mass; Lamps; ; kg; t; flat||||1.40; flat||||3.60; flat||||3.60
filled_mass; Filled mass; ; kg; ; flat||||33.81; flat||||83.16; flat||||151.98
shelf_load; Load on the shelf; ; kN/m²; ; flat||||1.602; flat||||1.957; flat||||1.990
lift_limit; One person lifts; ; kg; t; well||||25
crew_empty; People to lift, empty; ; each; ; flat||||1; flat||||2; flat||||do not lift
crew_filled; People to lift, filled; ; each; t; flat||||3; flat||||do not lift; flat||||do not lift
# Work; ; 2 more; minutes; 541; 727; 922
inspect_work; Inspect and leak check; ; min; ; flat||||21.9; flat||||34.2; flat||||44.6
panel_work; Panel; ; min; ; flat||||40.8; flat||||68.2; flat||||82.6
drainage_work; Drainage; ; min; ; flat||||8.3; flat||||17.4; flat||||32.2
mesh_work; Mesh; ; min; ; flat||||13.1; flat||||16.8; flat||||20.4
capping_work; Capping and bead; ; min; ; flat||||6.8; flat||||9.3; flat||||12.4
blend_work; Blend the mix; ; min; ; flat||||14.9; flat||||33.4; flat||||61.1
soil_work; Place the mix; ; min; ; flat||||8.4; flat||||17.5; flat||||31.1
hardscape_work; Hardscape; ; min; ; flat||||39.0; flat||||55.0; flat||||71.0
inoculate_work; Inoculate and mist; ; min; ; flat||||5.2; flat||||6.4; flat||||8.3
microfauna_work; Microfauna; ; min; ; flat||||6.0
plant_work; Plants; ; min; ; flat||||72.0; flat||||138.0; flat||||216.0
litter_batches; Share of a treatment; ; each; t; well||||1
litter_work; Leaves; ; min; ; flat||||20.4; flat||||22.8; flat||||26.6
cover_work; Cover glass; ; min; ; flat||||10.0; flat||||14.0; flat||||14.0
lamp_work; Lamps and timer; ; min; ; flat||||26.0; flat||||32.0; flat||||32.0
mist_work; Misting; ; min; ; flat||||28.0; flat||||36.0; flat||||44.0
finish_work; Clean and photographs; ; min; ; flat||||15.0
handover_work; Handover; ; min; ; flat||||40.0
survey_work; Survey; ; min; ; flat||||45.0
quote_work; Quote; ; min; ; flat||||60.0
delivery_work; Load, drive, carry; ; min; ; flat||||60.0
delivery_distance; Delivery distance; ; km; ; well||||0
delivery_need; Distance driven; ; km; t; flat||||0
# Prepare; ; ; ; 
plant_quarantine; Plant quarantine; ; d; ; well||||30
panel_cure; Panel cure; ; d; ; well||||7
# Checks; open; 10 more hold; ; 
stack_fits; Layers fit below the dam; ; ; t; flat|holds||holds|
soil_enough; Enough soil at the front; ; ; t; flat|holds||holds|
slope_holds; Slope holds; ; ; t; flat|holds||holds|
upturn_hidden; Mesh upturn hidden; ; ; t; flat|holds||holds|
litter_behind_dam; Litter behind the dam; ; ; t; flat|holds||holds|
leaves_close; Leaves close over the soil; ; ; t; flat|holds||holds|
air_open; Air open; ; ; t; flat|holds||holds|
cool_enough; Cool enough; ; ; t; flat|holds||holds|
cool_with_room; Cool with room; ; ; ; flat|holds||holds|; flat|watch|watch|watch|0.25 °C to spare; flat|holds||holds|
drains_slowly; Drains slowly; ; ; t; flat|holds||holds|
shelf_holds; Shelf holds; ; ; ; flat|holds||holds|; flat|stop|stop|stop|3.16 kg over; flat|waiting|wait|waits on shelf rating|
lift_empty; Lift empty; ; ; ; flat|holds||holds|; flat|holds||holds|; flat|watch|watch|watch|trolley or in place
cover_is_square; Cover is square; ; ; t; flat|holds||holds|
lift_filled; Lift filled; ; ; ; flat|holds||holds|; flat|advice|advice|advice|build in place; flat|advice|advice|advice|build in place
`.trim();
